using Advance.Planning;

namespace Advance.Tests.Planning.Power;

/// <summary>Hoists that draw current: fed like anything else, by what they are controlled with where that is a box of circuits, and with their leads up to where their motors hang.</summary>
public sealed class HoistPowerTests
{
    private const string Stock = """
        kinds:
          truss-3:
            name: Truss 3 m
            owned: 12
            weight: 18 kg weighed
            truss: {length: 3 m, bending-stiffness: 1700 kNm2, moment: 18 kNm, shear: 11 kN}
          hoist:
            name: Hoist 500 kg
            owned: 8
            weight: 45 kg weighed
            mains: {supply: 400 V three-phase 50 Hz, in-use: 1.4 A, at-most: 1.6 A, inrush: 9 A, leakage: 0.3 mA, inlet: 16 A red, power-factor: 0.8, displacement: 37 deg, third-harmonic: 0 %, turns: yes}
            hoist: {lifts: 500 kg, holds: 500 kg}
          control:
            name: Hoist control, four hoists
            role: distribution
            owned: 1
            mains: {supply: 230/400 V three-phase 50 Hz, in-use: 0 A, at-most: 0 A, inlet: 32 A red}
            outlets: [{outlet: 1-4, connector: 16 A red, phase: L1-L2-L3, device: D6, rating: 6 A, residual: 30 mA}]
          box:
            name: Distribution 63 A
            role: distribution
            owned: 1
            mains: {supply: 230/400 V three-phase 50 Hz, in-use: 0 A, at-most: 0 A, inlet: 63 A red}
            outlets: |
              outlet | connector | phase    | device | rating | residual
              1      | 32 A red  | L1-L2-L3 | C32    | 32 A   | 0 mA
              2-5    | 16 A red  | L1-L2-L3 | C16    | 16 A   | 30 mA
          lead: {name: Lead 16 A 25 m, role: cable, owned: 8, weight: 8 kg weighed, carries: mains, end-a: 16 A red male, end-b: 16 A red female, length: 25 m, section: 2.5 mm2, cores: 5, rating: 16 A}
          lead-long: {name: Lead 16 A 50 m, role: cable, owned: 8, weight: 16 kg weighed, carries: mains, end-a: 16 A red male, end-b: 16 A red female, length: 50 m, section: 2.5 mm2, cores: 5, rating: 16 A}
          feeder: {name: Feeder 32 A 25 m, role: cable, owned: 2, weight: 20 kg weighed, carries: mains, end-a: 32 A red male, end-b: 32 A red female, length: 25 m, section: 6 mm2, cores: 5, rating: 32 A}
        """;

    private const string Venue = """
        venue: A hall
        roof-points:
          P1: {place: SR 4 m US 2 m, height: 9 m, limit: 600 kg}
          P2: {place: SL 4 m US 2 m, height: 9 m, limit: 600 kg}
        services:
          A: {place: beside the stage, supply: 230/400 V three-phase 50 Hz, rating: 63 A, connector: 63 A red, earthing: TN-S, residual-protection: 300 mA}
        """;

    [Fact]
    public void A_hoist_with_a_draw_is_a_load_and_its_starting_current_comes_on_with_its_device()
    {
        var power = Plan("", "").Power;
        Assert.Equal(["hoist T1-1", "hoist T1-2"], power.Circuits.SelectMany(circuit => circuit.Chain.Loads).Select(load => load.Name).Order());
        Assert.Empty(power.Unfed);
        foreach (var circuit in power.Circuits)
        {
            var step = power.SwitchOn.Single(step => step.Circuits.Contains(circuit));
            Assert.Equal(9, step.Inrush.Value!.Value.Amperes, 1e-9);
        }
    }

    [Fact]
    public void What_it_is_controlled_with_feeds_it_where_that_is_a_box_of_circuits()
    {
        var power = Plan("Rig control", "by hand").Power;
        Assert.Equal("Rig control", DeviceOf(power, "hoist T1-1"));
        Assert.Equal([true, false], power.Circuits.OrderBy(circuit => circuit.Chain.First.Name, StringComparer.Ordinal).Select(circuit => circuit.Chain.Row is not null));
        Assert.Empty(power.GivenUp);
        Assert.Equal("Rig control", DeviceOf(Plan("rig control", "RIG CONTROL").Power, "hoist T1-2"));
    }

    [Fact]
    public void A_circuit_fixed_by_hand_goes_before_that() =>
        Assert.Equal("PD", DeviceOf(Plan("Rig control", "", "PD | hoist T1-1").Power, "hoist T1-1"));

    [Fact]
    public void Where_its_plug_does_not_fit_what_it_is_controlled_with_that_is_said()
    {
        var plan = Plan("Rig control", "", stock: Stock.Replace("outlet: 1-4, connector: 16 A red", "outlet: 1-4, connector: 16 A blue", StringComparison.Ordinal));
        Assert.Equal("PD", DeviceOf(plan.Power, "hoist T1-1"));
        Assert.Contains(plan.Findings, finding => finding.Rule == "power/fixed-circuit-given-up" && finding.Says.ToString().Contains("hoist T1-1", StringComparison.Ordinal));
    }

    // Along 0.5 m of 9 m: 4 m to stage right of its middle; 6 m up at the truss, 9 m at the roof.
    [Theory]
    [InlineData("down", 6)]
    [InlineData("up", 9)]
    public void Its_lead_goes_up_to_where_its_motor_hangs(string body, double high)
    {
        var load = Plan("", "", body: body).Power.Circuits.Select(circuit => circuit.Chain.First).Single(one => one.Name == "hoist T1-1");
        Assert.Equal(-4, load.Spot!.Value.X, 1e-9);
        Assert.Equal(high, load.Height!.Value, 1e-9);
    }

    // A motor at the truss lifts its lead with it: 8 kg or more each.
    [Fact]
    public void The_truss_carries_the_leads_of_the_motors_that_hang_at_it()
    {
        var (down, up) = (Plan("", ""), Plan("", "", body: "up"));
        var leads = Assert.Single(down.Rigging.Trusses.Single().Loads, load => load.What == "2 leads that end on it");
        var runs = down.Cables.Runs.Where(run => run.Links.Any(link => link.To.Port.Device.StartsWith("hoist", StringComparison.Ordinal))).ToList();
        Assert.Equal(runs.SelectMany(run => run.Leads).Sum(lead => lead.Weight!.Value.Value.Kilograms), leads.Weight.Value!.Value.Kilograms, 1e-9);
        Assert.DoesNotContain(up.Rigging.Trusses.Single().Loads, load => load.What.Contains("lead", StringComparison.Ordinal));
    }

    private static string DeviceOf(PowerPlan power, string load) => power.Circuits.Single(circuit => circuit.Chain.First.Name == load).Outlet.FedBy!.Name;

    private static Plan Plan(string first, string second, string circuits = "", string body = "down", string stock = Stock)
    {
        var gig = $"""
            gig: Powered hoists
            day: Sat 12 Sep 2026
            stock: stock.yaml
            venue: venue.yaml
            stage: {"{size: 10 x 6 m, height: 0 m above floor}"}
            power:
              services: {"{A: {place: US 5 m}}"}
              distributions:
                PD: {"{item: box, place: SL 4 m US 5 m, fed-by: service A}"}
                Rig control: {"{item: control, place: SL 3 m US 5 m, fed-by: PD outlet 1}"}
              circuits: |
                distribution | feeds
                {circuits}
            rigging:
              trusses:
                T1:
                  item: truss-3
                  length: 9 m
                  place: SL 0 m US 2 m
                  trim: 6 m above floor
                  picks: |
                    along | hoist | point | body | group
                    0.5 m | hoist | P1 | {body} | {first}
                    8.5 m | hoist | P2 | {body} | {second}
            """;
        return SmallShow.Of(gig, stock, Venue);
    }
}
