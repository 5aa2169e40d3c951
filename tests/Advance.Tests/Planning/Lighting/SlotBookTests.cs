using Advance.Domain;
using Advance.Domain.Gigs;
using Advance.Handbook;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

public sealed class SlotBookTests
{
    private static readonly string[] Modes = ["4-slot", "16-slot", "100-slot"];

    private static readonly Gen<FixtureRow[]> Rows =
        Gen.Select(Gen.Int[1, 4], Gen.Int[0, 2], Gen.Frequency((3, Gen.Const(0)), (1, Gen.Int[1, 400])), Gen.Int[1, 2])
            .Array[1, 8]
            .Select(rows => rows.Select((row, index) => LightingGigs.Row(
                1 + (index * 10), (index * 10) + row.Item1, "LX", Modes[row.Item2], row.Item3 == 0 ? null : new ControlAddress(row.Item4, row.Item3), line: index + 1)).ToArray());

    [Fact]
    public void Next_free_addresses_follow_on_in_the_order_of_the_numbers() => Assert.Equal(
        ["1 1/1", "2 1/17", "3 1/33", "4 1/37"],
        Addresses(PlanOf(LightingGigs.Row(3, 4, "LX"), LightingGigs.Row(1, 2, "LX", "16-slot", line: 2))));

    [Fact]
    public void What_is_fixed_is_obeyed_and_the_others_go_round_it() => Assert.Equal(
        ["1 1/1", "2 1/25", "3 1/29", "4 1/5", "5 1/9"],
        Addresses(PlanOf(LightingGigs.Row(1, 1, "LX"), LightingGigs.Row(2, 3, "LX", address: new ControlAddress(1, 25)), LightingGigs.Row(4, 5, "LX"))));

    [Fact]
    public void A_tenth_of_each_universe_stays_free_while_there_is_room_in_another()
    {
        // Common practice, no source: 52 of 512 slots are kept, so that 28 of 16 slots fit (448 of 460), and the next goes to universe 2.
        var addresses = Addresses(PlanOf(LightingGigs.Row(1, 29, "LX", "16-slot"))).ToList();
        Assert.Equal(("28 1/433", "29 2/1"), (addresses[27], addresses[28]));
    }

    [Fact]
    public void Nothing_overlaps_but_what_was_fixed_and_nothing_chosen_leaves_its_universe() => Rows.Sample(rows =>
    {
        var fixtures = PlanOf(rows).Lighting.Fixtures.Where(fixture => fixture.At is not null).ToList();
        foreach (var fixture in fixtures.Where(fixture => fixture.Row.Address is null))
        {
            Assert.True(fixture.Slots!.Value.IsInUniverse);
            Assert.DoesNotContain(fixtures, other => other != fixture && other.At!.Value.Universe == fixture.At!.Value.Universe && other.Slots!.Value.Overlaps(fixture.Slots.Value));
        }
    });

    [Fact]
    public void What_was_fixed_is_where_it_was_fixed() => Rows.Sample(rows =>
        Assert.All(PlanOf(rows).Lighting.Fixtures.Where(fixture => fixture.Row.Address is not null), fixture =>
        {
            var first = fixture.Row.Address!.Value.Value;
            Assert.Equal(first with { Slot = first.Slot + (fixture.Index * fixture.Mode!.Slots) }, fixture.At);
        }));

    [Fact]
    public void A_fixture_in_the_middle_keeps_all_other_addresses_once_they_were_issued() => Gen.Select(Rows, Gen.Int[0, 7], Gen.Int[0, 2]).Sample((rows, after, mode) =>
    {
        var issued = PlanOf(rows);
        var more = rows.Append(LightingGigs.Row((after * 10) + 9, (after * 10) + 9, "LX", Modes[mode], line: 99)).ToArray();
        var next = Addresses(PlanOf(issued, more)).ToHashSet();
        Assert.All(Addresses(issued).Where(address => !address.EndsWith(' ')), address => Assert.Contains(address, next));
    });

    [Fact]
    public void Without_an_earlier_issue_a_fixture_in_the_middle_moves_those_behind_it_and_none_before() => Assert.Equal(
        ["1 1/1", "2 1/5", "3 1/21"],
        Addresses(PlanOf(LightingGigs.Row(1, 1, "LX"), LightingGigs.Row(3, 3, "LX"), LightingGigs.Row(2, 2, "LX", "16-slot"))));

    [Fact]
    public void A_fixture_that_grew_into_its_neighbour_moves_and_the_neighbour_stays()
    {
        var issued = PlanOf(LightingGigs.Row(1, 1, "LX"), LightingGigs.Row(2, 2, "LX"));
        var next = PlanOf(issued, LightingGigs.Row(1, 1, "LX"), LightingGigs.Row(2, 2, "LX", "16-slot"), LightingGigs.Row(3, 3, "LX"));
        Assert.Equal(["1 1/1", "2 1/5", "3 1/21"], Addresses(next));
        var grown = PlanOf(issued, LightingGigs.Row(1, 1, "LX", "16-slot"), LightingGigs.Row(2, 2, "LX"));
        Assert.Equal(LightingControl.LastSlot(1, 16), grown.Lighting.Fixtures[0].Slots!.Value.Last);
        Assert.Equal(["1 1/1", "2 1/17"], Addresses(grown));
    }

    private static Plan PlanOf(params FixtureRow[] rows) => PlanOf(issued: null, rows);

    private static Plan PlanOf(Plan? issued, params FixtureRow[] rows) => Planner.Plan(Brief(rows), issued?.Chosen);

    private static Brief Brief(FixtureRow[] rows) => LightingGigs.Brief(LightingGigs.Gig([LightingGigs.Position("LX", 0, -1)], rows));

    private static IEnumerable<string> Addresses(Plan plan) => plan.Lighting.Fixtures.Select(fixture => $"{fixture.Number} {fixture.At}");
}
