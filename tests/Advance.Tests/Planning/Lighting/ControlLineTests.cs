using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>Lines of lighting control: a chain without branches from a source to a terminator, as ANSI E1.11 wants it.</summary>
public sealed class ControlLineTests
{
    private static readonly Gen<(int[] Counts, int[] Places, int Splits)> Rigs =
        Gen.Select(Gen.Int[1, 40].Array[1, 4], Gen.Int[-6, 6].Array[8], Gen.Int[0, 4]);

    [Fact]
    public void A_line_goes_on_to_the_nearest_position_and_through_it_the_short_way()
    {
        // Desk downstage centre, fixtures 0.3 m apart: both sides are as far, so the first is SR, and its inner end is left last.
        var gig = LightingGigs.Gig(
            [LightingGigs.Position("LX SR", -5, -1), LightingGigs.Position("LX SL", 5, -1)],
            LightingGigs.Row(1, 2, "LX SR"),
            LightingGigs.Row(3, 4, "LX SL"));
        Assert.Equal(
            ["control out 1 -> Fixture 1 in", "Fixture 1 link -> Fixture 2 in", "Fixture 2 link -> Fixture 3 in", "Fixture 3 link -> Fixture 4 in"],
            Links(Planner.Plan(LightingGigs.Brief(gig, LightingGigs.Terminator))));
    }

    [Fact]
    public void Each_fixture_is_linked_once_and_each_line_is_terminated_at_its_end() => Rigs.Sample(rig =>
    {
        var plan = PlanOf(rig);
        Assert.Equal(plan.Lighting.Fixtures.Select(fixture => fixture.Name).Order(), plan.Lighting.Links.Select(link => link.To.Port.Device).Where(name => !name.StartsWith("Control", StringComparison.Ordinal)).Order());
        Assert.All(plan.Lighting.Links.GroupBy(link => link.From.Port), source => Assert.Single(source));
        foreach (var line in plan.Lighting.Lines)
        {
            var terminator = Assert.Single(plan.Lighting.Pieces, piece => piece.Item == "end" && piece.Address.Text == $"{line.Address}/terminator");
            Assert.Equal(line.Fixtures[^1].Spot, terminator.Spot);
        }
    });

    [Fact]
    public void A_line_has_no_more_units_than_planned_where_the_splitter_has_outputs_enough() => Rigs.Sample(rig =>
    {
        var lines = PlanOf(rig).Lighting.Lines.ToList();
        if (rig.Splits > 1 && lines.Count < rig.Splits)
        {
            Assert.All(lines, line => Assert.True(line.Units.Value <= 24));
        }
    });

    [Fact]
    public void What_hands_nothing_on_ends_its_line()
    {
        var hazer = LightingGigs.Fixture("hazer", 0.4, ("1-slot", 1));
        hazer = hazer with { Ports = [.. hazer.Ports.Where(port => port.Port == PortKind.Input)] };
        var gig = LightingGigs.Gig([LightingGigs.Position("LX", 0, -1)], LightingGigs.Row(1, 1, "LX", "1-slot", item: "hazer"), LightingGigs.Row(2, 3, "LX"));
        Assert.Equal(["control out 1 -> Fixture 3 in", "Fixture 3 link -> Fixture 2 in", "Fixture 2 link -> Fixture 1 in"], Links(Planner.Plan(LightingGigs.Brief(gig, hazer))));
    }

    [Fact]
    public void A_shop_without_terminators_is_told_so()
    {
        var gig = LightingGigs.Gig([LightingGigs.Position("LX", 0, -1)], LightingGigs.Row(1, 1, "LX"));
        Assert.Contains(Planner.Plan(LightingGigs.Brief(gig)).Findings, finding => finding.Where.Text == "stock/terminator");
    }

    [Fact]
    public void A_doubt_about_a_kind_is_a_doubt_about_slots_and_units()
    {
        var doubt = new Doubt("lighting / fixtures / 1 / item", Gigs.Here);
        var row = LightingGigs.Row(1, 1, "LX") with { Item = Given.Of("wash", Gigs.Here, doubt) };
        var plan = Planner.Plan(LightingGigs.Brief(LightingGigs.Gig([LightingGigs.Position("LX", 0, -1)], row)));
        Assert.Equal([doubt], plan.Lighting.Universes[0].Used.RestsOn);
        Assert.Equal([doubt], plan.Lighting.Lines[0].Units.RestsOn);
    }

    private static Plan PlanOf((int[] Counts, int[] Places, int Splits) rig)
    {
        var positions = rig.Counts.Select((_, index) => LightingGigs.Position($"LX {index}", rig.Places[index], rig.Places[index + 4])).ToList();
        var rows = rig.Counts.Select((count, index) => LightingGigs.Row((index * 100) + 1, (index * 100) + count, $"LX {index}", line: index + 1)).ToArray();
        Kind[] kinds = rig.Splits > 1 ? [LightingGigs.Splitter(rig.Splits), LightingGigs.Terminator] : [LightingGigs.Terminator];
        return Planner.Plan(LightingGigs.Brief(LightingGigs.Gig(positions, rows), kinds));
    }

    private static IEnumerable<string> Links(Plan plan) => plan.Lighting.Links.Select(link => $"{link.From.Port} -> {link.To.Port}");
}
