using Advance.Planning;
using Advance.Reading;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning.Power;

/// <summary>What leads carry where they lie, and the loops of faults, by hand.</summary>
public sealed class ProtectionTests
{
    private const double Near = 1e-9;

    // IEC 60228 class 5, tinned: 8.21 ohm per km for 2.5 mm², 3.39 for 6 mm² at 20 °C, by 1 + 0.00393 · 40 at 60 °C; 0.08 ohm per km of reactance.
    private const double Hot = 1 + (0.00393 * 40);

    private const string Lamp = "hall: {things: [{name: Lamp, item: lamp, place: SL}]}\n";

    [Fact]
    public void A_loop_is_that_of_the_supply_and_of_lines_and_earths_there_and_back()
    {
        var way = Plan(Lamp, "venue-loop.yaml").Protection.Faults.Single(found => found.Name == "PD1 outlet 1");
        var (resistance, reactance) = (2 * Hot * ((0.025 * 3.39) + (0.02 * 8.21)), 2 * 0.08 * 0.045);
        Assert.Equal(0.35 + Math.Sqrt((resistance * resistance) + (reactance * reactance)), way.Loop.Value!.Value.Ohms, 1e-6);
    }

    // 0.95 · 230 V / (10 · 16 A) = 1.366 ohm: BS 7671 table 41.3 has 1.37 for C16. 50 V / 30 mA = 1667 ohm: the same book, 411.5.3.
    [Fact]
    public void What_is_allowed_is_what_opens_the_device()
    {
        var way = Plan(Lamp, "venue-loop.yaml").Protection.Faults.Single(found => found.Name == "PD1 outlet 1");
        Assert.Equal(1.37, way.Permitted.Value!.Value.Ohms, 0.005);
        Assert.Equal(1667, way.ByResidual.Value!.Value.Ohms, 0.5);
    }

    // 230 V / 1.2 kA = 0.192 ohm of the supply, as reactance, and 25 m of 6 mm² cold, there and back.
    [Fact]
    public void The_largest_fault_at_an_outlet_is_what_cold_feeders_let_through()
    {
        var way = Plan(Lamp, "venue-loop.yaml").Protection.Faults.Single(found => found.Name == "PD1 outlet 1");
        var (supply, feeder) = (230 / 1200.0, 2 * 0.025 * 3.39);
        Assert.Equal(230 / Math.Sqrt((supply * supply) + (feeder * feeder)), way.Largest.Value!.Value.Amperes, 0.5);
    }

    [Fact]
    public void A_longer_way_is_a_higher_loop() =>
        Assert.True(Loop("DS 50 m", "company: company-joins.yaml\n") > Loop("SL", "") + 0.5);

    // BS 7671 table 4F3A: 2.5 mm² of 60 °C carries 25 A on one phase.
    [Fact]
    public void Alone_in_cool_air_a_lead_carries_what_the_table_says()
    {
        var lead = LeadOf(Plan(Lamp), "PD1-1");
        Assert.Equal(25, lead.Bare.Value!.Value.Amperes, Near);
    }

    // √((60 - 45) / (60 - 30)) = 0.707: BS 7671 table 4B1 has 0.71 for 60 °C rubber at 45 °C.
    [Fact]
    public void Hot_air_takes_from_it() => Assert.Equal(25 * 0.71, LeadOf(Plan(Lamp, before: "temperature: 45 C\n"), "PD1-1").Bare.Value!.Value.Amperes, 0.1);

    [Fact]
    public void Air_that_its_insulation_does_not_bear_leaves_nothing_known() =>
        Assert.Null(LeadOf(Plan(Lamp, before: "temperature: 58 C\n"), "PD1-1").Bare.Value);

    // What is left over of 20 m, in turns of 1.5 m, counts as so many circuits bunched: BS 7671 table 4C1.
    [Fact]
    public void What_is_left_over_counts_as_turns_bunched()
    {
        var lead = LeadOf(Plan(Lamp), "PD1-1");
        var turns = (int)(lead.Run.Surplus.Value!.Value.Meters / 1.5);
        Assert.InRange(turns, 7, 11);
        Assert.Equal(25 * new[] { 0.54, 0.52, 0.50, 0.45, 0.45 }[turns - 7], lead.Carries.Value!.Value.Amperes, Near);
    }

    // BS 7671 table 4F1A to 4F3A, note on drums: a kettle's 15 A of 25 A hold on a radial drum, not on four layers.
    [Theory]
    [InlineData("radial", 0.75, false)]
    [InlineData("\"radial, ventilated\"", 0.85, false)]
    [InlineData("1 layer", 0.85, false)]
    [InlineData("2 layers", 0.65, false)]
    [InlineData("3 layers", 0.45, true)]
    [InlineData("4 layers", 0.35, true)]
    public void Left_on_its_drum_a_lead_carries_what_the_drum_allows(string drum, double factor, bool tooMuch)
    {
        var plan = Plan(Lamp.Replace("lamp,", "kettle,", StringComparison.Ordinal), drum: drum);
        var lead = LeadOf(plan, "PD1-1");
        Assert.Equal(25 * factor, lead.Carries.Value!.Value.Amperes, Near);
        Assert.Equal(tooMuch, plan.Findings.Any(finding => finding.Rule == "power/grouped-or-coiled" && finding.Says.ToString()!.Contains("PD1-1", StringComparison.Ordinal)));
    }

    // Kettles of 15 A on leads that lie in one way: table 4C1 for two and three circuits, until 25 A become less than 15.
    [Theory]
    [InlineData(1, 1, false)]
    [InlineData(2, 0.80, false)]
    [InlineData(3, 0.70, false)]
    [InlineData(4, 0.65, false)]
    [InlineData(6, 0.57, true)]
    public void A_mate_more_in_the_way_takes_more(int kettles, double factor, bool tooMuch)
    {
        var plan = Plan(Kettles(kettles), venue: "venue-fine.yaml");
        var group = plan.Protection.Leads.Where(lead => lead.Run.Route!.Ways.Count > 0 && lead.Lead.Id == "lead-16").ToList();
        Assert.Equal(kettles, group.Count);
        Assert.All(group, lead => Assert.Equal(25 * factor, lead.Carries.Value!.Value.Amperes, Near));
        Assert.Equal(tooMuch, plan.Findings.Any(finding => finding.Rule == "power/grouped-or-coiled" && finding.Where.Text.EndsWith("lies/field way", StringComparison.Ordinal)));
    }

    [Fact]
    public void Apart_they_take_nothing_and_under_a_ramp_somebody_has_to_say()
    {
        Assert.All(Grouped(", how: apart"), lead => Assert.Equal(25, lead.Carries.Value!.Value.Amperes, Near));
        Assert.All(Grouped(", how: one layer"), lead => Assert.Equal(25 * 0.75, lead.Carries.Value!.Value.Amperes, Near));
        Assert.All(Grouped(", how: ramp"), lead => Assert.Null(lead.Carries.Value));
        Assert.All(Grouped(", how: ramp, cover-factor: 80 %"), lead => Assert.Equal(25 * 0.65 * 0.8, lead.Carries.Value!.Value.Amperes, Near));
        Assert.All(Grouped(", other-circuits: 2"), lead => Assert.Equal(25 * 0.57, lead.Carries.Value!.Value.Amperes, Near));
        Assert.All(Grouped(", how: apart, air: 40 C"), lead => Assert.Equal(25 * 0.816, lead.Carries.Value!.Value.Amperes, 0.05));
    }

    private static IEnumerable<LeadCapacity> Grouped(string how) =>
        Plan(Kettles(4, how), venue: "venue-fine.yaml").Protection.Leads.Where(lead => lead.Run.Route!.Ways.Count > 0 && lead.Lead.Id == "lead-16");

    // 13 m of way, so that of 20 m no turn is left over.
    private static string Kettles(int count, string how = "") => $$"""
        hall:
          things:
        {{string.Concat(Enumerable.Range(1, count).Select(number => $"    - {{name: Kettle {number}, item: kettle, place: SL 0.3 m DS 12 m}}\n"))}}
        cable-ways:
          field way: {along: [US 0.5 m, SL 0.3 m DS 12 m]{{how}}}

        """;

    private static string OnDrum(string stock, string drum) =>
        drum.Length == 0 ? stock : stock.Replace("    length: 20 m\n", $"    length: 20 m\n    drum: {drum}\n", StringComparison.Ordinal);

    private static double Loop(string place, string before) =>
        Plan($"hall: {{things: [{{name: Lamp, item: lamp, place: {place}}}]}}\n", "venue-loop.yaml", before).Protection.Faults.Single(way => way.Name == "PD1 outlet 1").Loop.Value!.Value.Ohms;

    private static LeadCapacity LeadOf(Plan plan, string label) => plan.Protection.Leads.Single(lead => lead.Run.Label == label);

    private static Plan Plan(string gig, string venue = "venue.yaml", string before = "", string drum = "")
    {
        var folder = Path.Combine(RuleCase.Folder, "shop-power");
        const string Power = "power: {services: {A: {place: US 1 m}}, distributions: {PD1: {item: distro-4, place: USC, fed-by: service A}, PD2: {item: distro-4, place: USC, fed-by: service A}}}\n";
        var door = MemoryDoor.Of(
            ("gig.yaml", $"gig: Leads\nday: Sat 12 Sep 2026\nstock: stock.yaml\nvenue: {venue}\n{before}stage: {{size: 6 x 4 m, height: 0 m above floor}}\n{Power}{gig}"),
            ("stock.yaml", OnDrum(File.ReadAllText(Path.Combine(folder, "stock.yaml")), drum)),
            ("company-joins.yaml", File.ReadAllText(Path.Combine(folder, "company-joins.yaml"))),
            (venue, File.ReadAllText(Path.Combine(folder, venue))));
        var read = BriefReader.Read(door, "gig.yaml");
        Assert.True(read.Brief is not null, string.Join('\n', read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        return Planner.Plan(read.Brief);
    }
}
