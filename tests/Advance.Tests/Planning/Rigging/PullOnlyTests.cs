using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Chains pull and never push: against trying all sets of chains, and against what balance asks for.</summary>
public sealed class PullOnlyTests
{
    [Fact]
    public void It_finds_what_trying_all_sets_finds()
    {
        var slack = 0;
        foreach (var (truss, unevenness) in Trusses.Fixed(150).Zip(Trusses.Values(Gen.Double[-0.05, 0.05].Array[8], 150)))
        {
            foreach (var isSoft in new[] { false, true })
            {
                var chains = new PullOnly(truss, isSoft);
                double[] offsets = [.. unevenness.Take(truss.Hoists.Count)];
                var found = chains.Solve(offsets)!;
                var oracle = Oracle(chains, truss, offsets);
                Assert.All(oracle.Zip(found.Levels), pair => Assert.Equal(pair.First, pair.Second, 1e-6 * truss.Weight));
                slack += found.Levels.Count(level => level == 0);
            }
        }

        // Trusses on which nothing ever goes slack would prove little.
        Assert.True(slack > 200, $"{slack} slack chains");
    }

    [Fact]
    public void Where_it_starts_makes_no_difference()
    {
        foreach (var (truss, unevenness) in Trusses.Fixed(150).Zip(Trusses.Values(Gen.Double[-0.02, 0.02].Array[8], 150)))
        {
            var chains = new PullOnly(truss, isSoft: true);
            double[] offsets = [.. unevenness.Take(truss.Hoists.Count)];
            var level = chains.Solve(new double[truss.Hoists.Count])!;
            Assert.All(
                chains.Solve(offsets)!.Levels.Zip(chains.Solve(offsets, null, level.Levels)!.Levels),
                pair => Assert.Equal(pair.First, pair.Second, 1e-6 * truss.Weight));
        }
    }

    [Fact]
    public void Sum_and_moment_balance_and_a_slack_hook_is_never_below_its_chain()
    {
        foreach (var (truss, unevenness) in Trusses.Fixed(300).Zip(Trusses.Values(Gen.Double[-0.1, 0.1].Array[8], 300)))
        {
            double[] offsets = [.. unevenness.Take(truss.Hoists.Count)];
            var found = new PullOnly(truss, isSoft: true).Solve(offsets)!;
            Assert.All(found.Levels, level => Assert.True(level >= 0));
            Assert.All(Enumerable.Range(0, offsets.Length).Where(hoist => found.Levels[hoist] == 0), hoist => Assert.True(found.Heights is not { } heights || heights[hoist] >= offsets[hoist] - 1e-9));
            Assert.Equal(truss.Weight, found.Levels.Sum(), 1e-6 * truss.Weight);
            var moment = found.Levels.Zip(truss.Hoists, (level, hoist) => level * (hoist.At - truss.Centre)).Sum();
            Assert.Equal(0, moment, 1e-6 * truss.Weight * truss.Length);
        }
    }

    [Fact]
    public void A_short_back_span_goes_slack_instead_of_pushing()
    {
        // Supports 0, 8, 10 m with 10 kN at 4 m: a beam that is held down gives 3.5, 12.5, -6.0; on chains the last one is slack.
        var truss = new HungBeam(10, 1e6, null, [], [new HungLoad(4, 10_000)], [new(0), new(8), new(10)]);
        var found = new PullOnly(truss, isSoft: false).Solve([0, 0, 0])!;
        Assert.All(new double[] { 5000, 5000, 0 }.Zip(found.Levels), pair => Assert.Equal(pair.First, pair.Second, 1e-6));
        Assert.Equal([true, true, false], found.Set);
    }

    [Fact]
    public void One_chain_right_above_the_centre_of_gravity_may_carry_all()
    {
        var truss = new HungBeam(10, 1e6, null, [new HungWeight(0, 10, 100)], [], [new(0), new(5), new(10)]);
        var found = new PullOnly(truss, isSoft: false).Solve([0, 1, 0])!;
        Assert.All(new double[] { 0, 1000, 0 }.Zip(found.Levels), pair => Assert.Equal(pair.First, pair.Second, 1e-6));
        var alone = new HungBeam(10, 1e6, null, [new HungWeight(0, 10, 100)], [], [new(5)]);
        Assert.Equal([1000], new PullOnly(alone, isSoft: false).Solve([0])!.Levels);
    }

    [Fact]
    public void Nothing_holds_a_truss_whose_centre_of_gravity_is_outside()
    {
        var truss = new HungBeam(10, 1e6, null, [new HungWeight(0, 10, 100)], [], [new(0), new(4)]);
        Assert.False(truss.IsInside);
        Assert.Null(new PullOnly(truss, isSoft: false).Solve([0, 0]));
    }

    [Fact]
    public void Raising_all_alike_or_tilting_changes_nothing()
    {
        foreach (var truss in Trusses.Fixed(60))
        {
            var chains = new PullOnly(truss, isSoft: false);
            var level = chains.Solve(new double[truss.Hoists.Count])!;
            var tilted = chains.Solve([.. truss.Hoists.Select(hoist => 0.03 + (0.01 * hoist.At))])!;
            Assert.All(level.Levels.Zip(tilted.Levels), pair => Assert.Equal(pair.First, pair.Second, 1e-6 * truss.Weight));
        }
    }

    // A set is right where none of its chains pushes and the truss hangs no lower than any other hook.
    private static IReadOnlyList<double> Oracle(PullOnly chains, HungBeam truss, double[] offsets)
    {
        var count = truss.Hoists.Count;
        for (var bits = (1 << count) - 1; bits > 0; bits--)
        {
            bool[] set = [.. Enumerable.Range(0, count).Select(hoist => (bits >> hoist & 1) == 1)];
            if (set.Count(one => one) < 2)
            {
                continue;
            }

            var solved = chains.SolveOn(set, offsets);
            if (Enumerable.Range(0, count).All(hoist => set[hoist] ? solved.Reactions[hoist] > -1e-7 * truss.Weight : solved.Heights[hoist] > offsets[hoist] - 1e-9))
            {
                return solved.Reactions;
            }
        }

        throw new InvalidOperationException("No set of chains is right.");
    }
}
