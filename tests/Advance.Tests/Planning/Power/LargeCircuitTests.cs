using Advance.Planning;

namespace Advance.Tests.Planning.Power;

/// <summary>Five hundred loads on twelve three-phase distributions.</summary>
public sealed class LargeCircuitTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Worst_utilisation_is_within_one_per_cent_of_what_is_proven_to_be_the_least(ulong seed)
    {
        var problem = LargeCircuits.Of(seed);
        var answer = CircuitSolver.Solve(problem);
        Assert.True(answer.Score.IsWhole);
        Assert.InRange(answer.Gap, 0, 0.01);
        Assert.InRange(answer.LeastUse, 1, answer.Score.Use);
    }

    [Fact]
    public void Each_load_is_fed_once_no_outlet_twice_and_pins_are_kept()
    {
        var problem = LargeCircuits.Of(3);
        var answer = CircuitSolver.Solve(problem);
        Assert.Equal(problem.Wishes.Count, answer.Taken.Count);
        Assert.All(answer.Taken.Zip(problem.Wishes), one => Assert.Contains(one.First!, one.Second.Options));
        Assert.All(problem.Groups.Select((group, index) => (group.Slots, index)), one => Assert.True(answer.Taken.Count(option => option!.Group == one.index) <= one.Slots));
        Assert.Contains(problem.Wishes, wish => wish.IsFixed);
        Assert.All(answer.Taken.Zip(problem.Wishes).Where(one => one.Second.IsFixed), one => Assert.True(one.First!.Keeps));
    }

    [Fact]
    public void What_is_kept_up_step_by_step_is_the_score()
    {
        var problem = LargeCircuits.Of(4, 120, 6);
        var answer = CircuitAllotment.Solve(problem);
        Assert.Equal(CircuitScore.Of(problem, answer.Taken), answer.Score);
    }

    [Fact]
    public void The_same_problem_has_the_same_answer_and_in_another_order_the_same_score()
    {
        var problem = LargeCircuits.Of(2, 200, 6);
        var answer = CircuitSolver.Solve(problem);
        Assert.Equal(answer.Taken, CircuitSolver.Solve(problem).Taken);
        var turned = problem with { Wishes = [.. problem.Wishes.Select((wish, index) => (wish, index)).OrderBy(one => one.index * 83 % 200).Select(one => one.wish)] };
        Assert.NotEqual(problem.Wishes, turned.Wishes);
        var other = CircuitSolver.Solve(turned);
        Assert.Equal(answer.Score, other.Score);
        Assert.Equal(answer.LeastUse, other.LeastUse);
    }

    [Fact]
    public void A_first_answer_is_never_better_than_the_last()
    {
        for (var seed = 1UL; seed <= 5; seed++)
        {
            var problem = LargeCircuits.Of(seed, 150, 6);
            var first = CircuitGreedy.Build(problem, CircuitLeeway.All(problem), CircuitGreedy.Order(problem), 0).Score;
            Assert.True(CircuitAllotment.Solve(problem).Score.CompareTo(first) <= 0);
        }
    }
}
