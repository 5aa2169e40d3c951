using Advance.Domain.Stocks;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>What holds of every plan of cables.</summary>
public sealed class CablePropertyTests
{
    private static readonly Gen<Link> Links = Gen.Select(Gen.Int[1, 12], Gen.Double[-10, 10], Gen.Double[-8, 6], Gen.Bool, (number, x, y, isMic) =>
        isMic ? CableGigs.Mic(number, x, y) : CableGigs.Circuit(number, x, y));

    private static readonly Gen<Link[]> Gigs12 = Links.Array[1, 14].Select(links => links.DistinctBy(link => link.Address).ToArray());

    private static readonly Gen<Kind[]> Shelves = Gen.Int[0, 6].Array[7].Select(owned => new[]
    {
        CableGigs.Mic(5, owned[0]), CableGigs.Mic(10, owned[1]), CableGigs.Mic(20, owned[2]),
        CableGigs.Mains(10, owned[3]), CableGigs.Mains(25, owned[4]), CableGigs.ToLocking(5, owned[5]), CableGigs.ToLocking(10, owned[6]),
    });

    private static readonly Kind[] Plenty = [.. new double[] { 5, 10, 20, 50 }.SelectMany(metres => new[] { CableGigs.Mic(metres), CableGigs.ToLocking(metres) })];

    [Fact]
    public void No_run_is_shorter_than_its_way_and_no_lead_is_used_twice() => Gen.Select(Gigs12, Shelves).Sample((links, shelf) =>
    {
        var plan = CableGigs.Plan(CableGigs.OnDeck(), links, shelf);
        Assert.Equal(links.Length, plan.Runs.Count);
        foreach (var run in plan.Runs)
        {
            Assert.True(run.Needed.Value!.Value >= run.Route!.Path);
            Assert.True(run.MadeUp.Value is null || run.MadeUp.Value.Value.Meters >= run.Needed.Value.Value.Meters - 1e-5);
            Assert.Equal(run.Gap == RunGap.None, run.Leads.Count > 0);
        }

        Assert.All(shelf, kind => Assert.True(plan.Pieces.Count(piece => piece.Item == kind.Id) <= kind.Owned.Value));
        Assert.Equal(plan.Runs.Sum(run => run.Leads.Count), plan.Pieces.Count);
        Assert.Equal(plan.Pieces.Count, plan.Pieces.Select(piece => piece.Address).Distinct().Count());
    });

    [Fact]
    public void The_order_of_links_and_kinds_does_not_matter() => Gen.Select(Gigs12, Shelves, Gen.Int[0, 1000]).Sample((links, shelf, seed) =>
    {
        var shuffled = links.OrderBy(link => (link.Address.Text.Length * 31) ^ (link.Address.Text[^1] * 7919) ^ seed).ToArray();
        Assert.Equal(CableGigs.Made(CableGigs.Plan(CableGigs.OnDeck(), links, shelf)), CableGigs.Made(CableGigs.Plan(CableGigs.OnDeck(), shuffled, [.. shelf.Reverse()])));
    });

    [Fact]
    public void One_more_run_or_one_that_moves_changes_no_other_where_there_is_enough() => Gen.Select(Gigs12, Links, Gen.Bool).Sample((links, other, hasIssue) =>
    {
        var before = CableGigs.Plan(CableGigs.OnDeck(), links, Plenty);
        IReadOnlyList<Link> changed = [.. links.Where(link => link.Address != other.Address), other];
        var after = CableGigs.Plan(CableGigs.OnDeck(), changed, Plenty, hasIssue ? before.Chosen : null);
        var label = after.Of(other.Address)!.Label;
        Assert.Equal(Others(before, label), Others(after, label));
    });

    [Fact]
    public void After_an_issue_nothing_changes_that_could_stay_even_where_there_is_not_enough() => Gen.Select(Gigs12, Shelves, Links).Sample((links, shelf, other) =>
    {
        var before = CableGigs.Plan(CableGigs.OnDeck(), links, shelf);
        var again = CableGigs.Plan(CableGigs.OnDeck(), links, shelf, before.Chosen);
        Assert.Equal(CableGigs.Made(before), CableGigs.Made(again));

        // One more run may only have what is left, unless others making room leaves fewer without.
        if (links.All(link => link.Address != other.Address))
        {
            var after = CableGigs.Plan(CableGigs.OnDeck(), [.. links, other], shelf, before.Chosen);
            var label = after.Of(other.Address)!.Label;
            var moved = Others(before, label).Except(Others(after, label), StringComparer.Ordinal).Count();
            Assert.True(moved == 0 || after.Of(other.Address)!.Leads.Count > 0);
        }
    });

    [Fact]
    public void With_nothing_changed_a_plan_is_the_same_with_its_own_choices() => Gigs12.Sample(links =>
    {
        var plan = CableGigs.Plan(CableGigs.OnDeck(), links, Plenty);
        Assert.Equal(CableGigs.Made(plan), CableGigs.Made(CableGigs.Plan(CableGigs.OnDeck(), links, Plenty, plan.Chosen)));
    });

    private static IEnumerable<string> Others(CablePlan plan, string label) => CableGigs.Made(plan).Where(made => !made.StartsWith($"{label}:", StringComparison.Ordinal));
}
