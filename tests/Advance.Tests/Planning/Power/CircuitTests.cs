using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>The choice of circuits against trying all of them.</summary>
public sealed class CircuitTests
{
    [Fact]
    public void What_is_chosen_is_the_best_of_all_answers() => CircuitProblems.Any.Sample(IsBest, iter: 400);

    [Fact]
    public void So_it_is_with_eight_loads() => CircuitProblems.Eight.Sample(IsBest, iter: 15);

    [Fact]
    public void So_it_is_behind_residual_devices_and_breakers() => CircuitProblems.Guarded.Sample(IsBest, iter: 60);

    [Fact]
    public void Moves_and_exchanges_alone_are_no_better_than_the_best_and_no_worse_than_they_say() => CircuitProblems.Guarded.Sample(
        problem =>
        {
            var best = CircuitScore.Of(problem, CircuitProblems.TryAll(problem));
            var found = CircuitAllotment.Solve(problem);
            Assert.Equal(CircuitScore.Of(problem, found.Taken), found.Score);
            Assert.True(best.CompareTo(found.Score) <= 0);
            if (best.CompareHead(found.Score) == 0)
            {
                Assert.InRange(best.Use, found.LeastUse, found.Score.Use);
            }
        },
        iter: 150);

    [Fact]
    public void The_solver_says_the_same_where_matching_would_do()
    {
        var proven = 0;
        CircuitProblems.Any.Select(WithoutLimits).Sample(
            problem =>
            {
                var answer = CircuitSolver.Solve(problem);
                var searched = CircuitSolver.Search(problem, Nothing(problem));
                Assert.True(searched.IsProven);
                Assert.Equal(answer.Taken, searched.Taken);
                if (IsProvenByBounds(problem))
                {
                    Interlocked.Increment(ref proven);
                }
            },
            iter: 60);
        Assert.NotEqual(0, proven);
    }

    [Fact]
    public void Matching_alone_is_the_best_where_nothing_has_a_limit() => CircuitProblems.Any.Select(WithoutLimits).Sample(
        problem => Assert.Equal(CircuitProblems.Ranks(problem, CircuitProblems.TryAll(problem)), CircuitProblems.Ranks(problem, CircuitMatching.Solve(problem))),
        iter: 300);

    [Fact]
    public void No_outlet_is_given_twice() => CircuitProblems.Any.Sample(
        problem =>
        {
            var taken = CircuitSolver.Solve(problem).Taken;
            Assert.All(problem.Groups.Select((group, index) => (group.Slots, index)), one => Assert.True(taken.Count(option => option?.Group == one.index) <= one.Slots));
        },
        iter: 200);

    [Fact]
    public void What_was_issued_stays_when_a_load_is_added_that_finds_room() => CircuitProblems.Any.Sample(
        problem =>
        {
            var roomy = problem with { Groups = [.. problem.Groups.Select(group => group with { Slots = 9, Limit = null })], Nodes = [.. problem.Nodes.Select(node => node with { Limit = null })] };
            var issued = CircuitSolver.Solve(roomy with { Wishes = [.. roomy.Wishes.Skip(1)] }).Taken;
            var wishes = roomy.Wishes.Skip(1).Zip(issued, (wish, option) => wish with { Earlier = option?.Group }).Prepend(roomy.Wishes[0]).ToList();
            Assert.Equal(issued, CircuitSolver.Solve(roomy with { Wishes = wishes }).Taken.Skip(1));
        },
        iter: 200);

    private static CircuitAnswer Nothing(CircuitProblem problem)
    {
        CircuitOption?[] none = new CircuitOption?[problem.Wishes.Count];
        return new CircuitAnswer(none, CircuitScore.Of(problem, none), IsProven: false, 0);
    }

    private static void IsBest(CircuitProblem problem)
    {
        var answer = CircuitSolver.Solve(problem);
        Assert.True(answer.IsProven);
        Assert.Equal(CircuitProblems.Ranks(problem, CircuitProblems.TryAll(problem)), CircuitProblems.Ranks(problem, answer.Taken));
    }

    private static bool IsProvenByBounds(CircuitProblem problem) => CircuitBounds.Prove(problem, CircuitScore.Of(problem, CircuitMatching.Solve(problem)));

    private static CircuitProblem WithoutLimits(CircuitProblem problem) => problem with
    {
        Groups = [.. problem.Groups.Select(group => group with { Limit = null, Supply = 0 })],
        Nodes = [.. problem.Nodes.Select(node => new CircuitNode(null, node.Others))],
        Wishes = [.. problem.Wishes.Select(wish => wish with { Earth = CircuitEarth.Free })],
    };
}
