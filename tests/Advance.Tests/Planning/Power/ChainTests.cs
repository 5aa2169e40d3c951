using Advance.Planning;
using Advance.Reading;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning.Power;

/// <summary>What hangs on one outlet, as written in a gig.</summary>
public sealed class ChainTests
{
    private const string Head = """
        gig: Chains
        day: Sat 12 Sep 2026
        stock: stock.yaml
        venue: venue.yaml
        stage: {size: 6 x 4 m, height: 0.5 m above floor}

        """;

    private const string Power = """
        power:
          services: {A: {place: US 5 m}}
          distributions:
            PD1: {item: distro-4, place: USC, fed-by: service A}

        """;

    [Fact]
    public void A_stack_is_linked_from_the_floor_up_and_fed_at_its_foot()
    {
        var plan = Plan("sound: {stacks: {Main: {place: SR, from-floor-up: [wedge, wedge, wedge]}}}\n" + Power);
        var circuit = Assert.Single(plan.Power.Circuits);
        Assert.Equal(["Main 1", "Main 2", "Main 3"], circuit.Chain.Loads.Select(load => load.Name));
        Assert.Equal(
            ["PD1 outlet 1 to Main 1 in", "Main 1 link to Main 2 in", "Main 2 link to Main 3 in"],
            plan.Power.Links.Where(link => link.To.Port.Device != "PD1").Select(link => $"{link.From.Port} to {link.To.Port}"));
    }

    [Fact]
    public void A_box_that_hands_nothing_on_ends_its_chain()
    {
        var plan = Plan("sound: {stacks: {Main: {place: SR, from-floor-up: [box, wedge-plain, box]}}}\n" + Power);
        Assert.Equal(["Main: 2", "Main 2: 1"], plan.Power.Circuits.Select(circuit => $"{circuit.Chain.Name}: {circuit.Chain.Loads.Count}"));
    }

    [Fact]
    public void Fixtures_of_a_position_are_linked_at_its_trim()
    {
        var plan = Plan("""
            lighting:
              positions: {LX: {place: SR 4 m, trim: 3 m above deck}}
              fixtures: |
                name | item    | position
                1-2  | fixture | LX

            """ + Power);
        Assert.Equal(2, Assert.Single(plan.Power.Circuits).Chain.Loads.Count);
        var lead = plan.Power.Links.Single(link => link.From.Port.Device == "PD1" && link.To.Port.Device != "PD1");
        Assert.Equal(3.5, lead.To.Height, 1e-9);
    }

    [Fact]
    public void Wedges_hang_alone_unless_a_circuit_names_them_all()
    {
        const string Mixes = """
            acts:
              Duo:
                people: 2
                mixes: |
                  mix | for  | with  | place
                  1   | Bass | wedge | SL
                  2   | Keys | wedge | SR

            """;
        Assert.Equal(2, Plan(Mixes + Power).Power.Circuits.Count);
        var named = Plan(Mixes + Power + "  circuits: |\n    distribution | circuit | feeds\n    PD1 | 3 | wedges\n").Power;
        var circuit = Assert.Single(named.Circuits);
        Assert.Equal("PD1 outlet 3", circuit.Name);
        Assert.Equal(["mix 2 Keys", "mix 1 Bass"], circuit.Chain.Loads.Select(load => load.Name));
        Assert.Empty(named.GivenUp);
    }

    [Fact]
    public void A_wedge_more_moves_no_stack_and_no_desk_in_a_first_plan()
    {
        const string Rig = """
            sound:
              consoles: {FOH: {item: wedge-plain, place: DS 6 m}}
              stacks: {Main: {sides: SR SL, place: 3 m off centre, from-floor-up: [box]}}
            acts:
              Duo:
                people: 2
                mixes: |
                  mix | for  | with  | place

            """;
        var without = Hung(Plan(Rig + "      2   | Keys | wedge | SR\n" + Two));
        var with = Hung(Plan(Rig + "      1   | Bass | wedge | SL\n      2   | Keys | wedge | SR\n" + Two));
        foreach (var name in new[] { "FOH", "Main SR", "Main SL" })
        {
            Assert.Equal(without[name], with[name]);
        }
    }

    [Fact]
    public void Sound_stays_on_the_service_where_some_of_it_was_fixed()
    {
        var plan = Plan("""
            sound:
              consoles: {FOH: {item: wedge-plain, place: DS 6 m}}
              stacks: {Main: {place: SR, from-floor-up: [box]}}
            power:
              services: {A: {place: US 5 m}, B: {place: DS 6 m}}
              distributions:
                PD1: {item: distro-4, place: USC, fed-by: service A}
                PD2: {item: distro-4, place: DS 6 m, fed-by: service B}
              circuits: |
                distribution | feeds
                PD1          | Main

            """, venue: "venue-two.yaml");
        Assert.All(plan.Power.Circuits, circuit => Assert.Equal("PD1", circuit.Outlet.Device!.Name));
    }

    [Theory]
    [InlineData("people: 5", 3, "", 3 * 500 / 230.0)]
    [InlineData("people: 2", 3, "", 2 * 500 / 230.0)]
    [InlineData("people: TBC", 3, "", 3 * 500 / 230.0)]
    [InlineData("people: 5", 2, "0.4 A", 0.8)]
    public void Backline_that_nobody_knows_is_so_many_watts_a_player(string people, int things, string draws, double amperes)
    {
        var rows = string.Concat(Enumerable.Range(1, things).Select(number => $"      amp {number} | C | {draws}\n"));
        var plan = Plan($"acts:\n  Band:\n    {people}\n    backline: |\n      name | place | draws\n{rows}{Power}");
        var use = plan.Power.Services[0].Legs[0];
        Assert.Equal(amperes, use.InStates[0].Value!.Value.Amperes, 1e-9);
        Assert.Equal(people.EndsWith("TBC", StringComparison.Ordinal), use.InUse.RestsOn.Any);
    }

    [Fact]
    public void What_needs_no_mains_is_no_load()
    {
        var plan = Plan("acts:\n  Band:\n    people: 2\n    backline: |\n      name  | place | draws\n      drums | C     | 0 A\n" + Power);
        Assert.Empty(plan.Power.Circuits);
    }

    private const string Two = """
        power:
          services: {A: {place: US 5 m}}
          distributions:
            PD1: {item: distro-4, place: USC, fed-by: service A}
            PD2: {item: distro-4, place: USC, fed-by: service A}

        """;

    private static Dictionary<string, string> Hung(Plan plan) => plan.Power.Circuits.ToDictionary(circuit => circuit.Chain.Name, circuit => circuit.Name, StringComparer.Ordinal);

    private static Plan Plan(string gig, string venue = "venue.yaml")
    {
        var folder = Path.Combine(RuleCase.Folder, "shop-power");
        var door = MemoryDoor.Of(
            ("gig.yaml", Head.Replace("venue.yaml", venue, StringComparison.Ordinal) + gig),
            ("stock.yaml", File.ReadAllText(Path.Combine(folder, "stock.yaml"))),
            (venue, File.ReadAllText(Path.Combine(folder, venue))));
        var read = BriefReader.Read(door, "gig.yaml");
        Assert.True(read.Brief is not null, string.Join('\n', read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        return Planner.Plan(read.Brief);
    }
}
