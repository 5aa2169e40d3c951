using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>Which circuits fixed by hand to free, against trying out all answers.</summary>
public sealed class CircuitPinsTests
{
    [Fact]
    public void What_is_named_helps_and_none_of_it_can_be_left_out() => CircuitProblems.Any.Sample(
        problem =>
        {
            var named = CircuitPins.ToFree(problem, CircuitSolver.Solve(problem));
            var isGood = IsGood(problem, []);
            Assert.True(!isGood || named.Count == 0);
            if (!isGood && named.Count == 0)
            {
                Assert.False(IsGood(problem, [.. Fixed(problem)]));
            }

            if (named.Count > 0)
            {
                Assert.All(named, pin => Assert.Contains(pin, Fixed(problem)));
                Assert.True(IsGood(problem, named));
                Assert.All(named, pin => Assert.False(IsGood(problem, [.. named.Where(other => other != pin)])));
                Assert.True(named.Count == 1 || !Fixed(problem).Any(pin => IsGood(problem, [pin])));
            }
        },
        iter: 200);

    // Two places for 16 A and 6 A; a lamp of 1 A is fixed on the large one, a kettle of 15 A is left with the small one.
    [Fact]
    public void A_lamp_on_the_place_of_a_kettle_is_named()
    {
        var problem = new CircuitProblem(
            [new CircuitWish(1, [100], CircuitEarth.Free, [new(0, 0, Keeps: true), new(1, 0, Keeps: false)], IsFixed: true), new CircuitWish(1, [1500], CircuitEarth.Free, [new(0, 0, false), new(1, 0, false)])],
            [new CircuitGroup(1, 1600, [], 0), new CircuitGroup(1, 600, [], 0)],
            [],
            1);
        Assert.Equal([0], CircuitPins.ToFree(problem, CircuitSolver.Solve(problem)));
    }

    [Fact]
    public void What_is_called_costly_is_so_by_an_answer_that_exists() => CircuitProblems.Any.Sample(
        problem =>
        {
            var answer = CircuitSolver.Solve(problem);
            var (pins, use) = CircuitPins.Costly(problem, answer);
            if (pins.Count > 0)
            {
                var freed = problem with { Wishes = [.. problem.Wishes.Select((wish, index) => pins.Contains(index) ? wish with { IsFixed = false } : wish)] };
                var best = CircuitScore.Of(freed, CircuitProblems.TryAll(freed));
                Assert.True(use <= answer.Score.Use + CircuitScore.Comfortable - 50);
                Assert.True(best.CompareHead(answer.Score) < 0 || best.Use + CircuitScore.Comfortable <= use);
                Assert.All(pins, pin => Assert.True(problem.Wishes[pin].IsFixed));
            }
        },
        iter: 200);

    [Fact]
    public void Two_fixed_on_one_strip_cost_what_outlets_of_their_own_would_save()
    {
        CircuitWish Wish() => new(1, [700], CircuitEarth.Free, [new(0, 0, Keeps: true), new(1, 0, Keeps: false)], IsFixed: true);
        var problem = new CircuitProblem([Wish(), Wish()], [new CircuitGroup(2, 1600, [0], 0), new CircuitGroup(2, 1600, [], 0)], [new CircuitNode(1600, [0])], 1);
        var (pins, use) = CircuitPins.Costly(problem, CircuitSolver.Solve(problem));
        Assert.Equal([0, 1], pins);
        Assert.Equal(CircuitScore.Comfortable, use);
    }

    private static IEnumerable<int> Fixed(CircuitProblem problem) => Enumerable.Range(0, problem.Wishes.Count).Where(wish => problem.Wishes[wish].IsFixed);

    private static bool IsGood(CircuitProblem problem, IReadOnlyList<int> freed)
    {
        var other = problem with { Wishes = [.. problem.Wishes.Select((wish, index) => freed.Contains(index) ? wish with { IsFixed = false } : wish)] };
        var score = CircuitScore.Of(other, CircuitProblems.TryAll(other));
        return score.Over == 0 && score.Dark == problem.Wishes.Where(wish => wish.Options.Count == 0).Sum(wish => wish.Units);
    }
}
