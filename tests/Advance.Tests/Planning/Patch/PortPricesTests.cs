using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>What prices for ports prove against every choice there is, for small gigs.</summary>
public sealed class PortPricesTests
{
    // In PortTrial, what a way costs comes before where it leads.
    private const int Aims = 9;

    [Fact]
    public void The_bound_is_never_above_the_best_choice_and_leaves_its_options() => PortChoiceTests.Cases.Sample(
        found =>
        {
            found = found with { Wishes = [.. found.Wishes.Select(wish => wish with { Source = "" })] };
            var best = found.Trial().Best();
            var problem = PortProblem.Of(found.Wishes, found.Field);
            var left = problem.Options.Select(options => options.ToList()).ToArray();
            var limits = new Dictionary<PortAim, long>();
            foreach (var aim in Enum.GetValues<PortAim>().Where(aim => aim != PortAim.Moved))
            {
                var prices = PortPrices.Of(problem, left, limits, aim);
                Assert.True(prices.Least <= best[(int)aim], $"{aim}: {prices.Least} of {best[(int)aim]}");
                left = prices.Within(best[(int)aim]);
                limits[aim] = best[(int)aim];
            }

            Assert.All(left, (options, unit) => Assert.Contains(options, option => (option.HasPort ? option.Start : 1000) == best[Aims + unit]));
        },
        iter: 200,
        print: found => found.ToString());

    [Fact]
    public void The_bound_sees_that_two_lines_share_what_is_near()
    {
        // Two lines, each nearer to the one port of the first box: one of them goes the longer way, which no line by itself would.
        var found = PortCase.Of(1, 3, [new(1, 11, 1, 0, 0, 0, 10, 30, false), new(1, 12, 1, 0, 0, 0, 20, 50, false)], reserved: [], unbalanced: []);
        var problem = PortProblem.Of(found.Wishes, found.Field);
        var options = problem.Options.Select(unit => unit.Where(option => option.HasPort).ToList()).ToArray();
        Assert.Equal(50, PortPrices.Of(problem, options, new Dictionary<PortAim, long>(), PortAim.Lead).Least);
    }
}
