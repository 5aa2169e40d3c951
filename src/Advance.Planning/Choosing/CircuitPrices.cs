using System.Numerics;

namespace Advance.Planning;

/// <summary>One number for the aims of one wish, in order: the digits of the first aim stand before those of the next.</summary>
internal sealed class CircuitPrices
{
    private readonly CircuitProblem problem;
    private readonly Dictionary<(int Wish, int Group), (CircuitOption Option, BigInteger Price)> options = [];
    private readonly BigInteger[] weights;
    private readonly BigInteger distances;
    private readonly BigInteger changes;
    private readonly BigInteger units;
    private readonly int most;

    public CircuitPrices(CircuitProblem problem)
    {
        this.problem = problem;
        most = problem.Wishes.Select(wish => wish.Options.Count).DefaultIfEmpty().Max() + 1;
        weights = [.. Enumerable.Range(0, problem.Wishes.Count + 1).Select(power => BigInteger.Pow(most, problem.Wishes.Count - power))];
        distances = 1 + problem.Wishes.Sum(wish => wish.Options.Select(option => (long)option.Distance).DefaultIfEmpty().Max());
        changes = problem.Wishes.Count + 1;
        units = 1 + problem.Wishes.Sum(wish => (long)wish.Units);
        for (var wish = 0; wish < problem.Wishes.Count; wish++)
        {
            foreach (var (option, rank) in problem.Wishes[wish].Options.Select((option, rank) => (option, rank)))
            {
                options.TryAdd((wish, option.Group), (option, Price(wish, option, rank)));
            }
        }
    }

    /// <summary>The option by which a wish would get an outlet of a group; null where that does not fit.</summary>
    public CircuitOption? Option(int wish, int group) => options.TryGetValue((wish, group), out var found) ? found.Option : null;

    /// <summary>What that costs; null where it does not fit.</summary>
    public BigInteger? Of(int wish, int group) => options.TryGetValue((wish, group), out var found) ? found.Price : null;

    /// <summary>What it costs that a wish gets no outlet.</summary>
    public BigInteger Without(int wish) =>
        Price(wish, problem.Wishes[wish].IsFixed, problem.Wishes[wish].Units, problem.Wishes[wish].Earlier is not null, 0, 0, most - 1);

    private BigInteger Price(int wish, CircuitOption option, int rank) =>
        Price(wish, problem.Wishes[wish].IsFixed && !option.Keeps, 0, problem.Wishes[wish].Earlier is { } earlier && earlier != option.Group, option.Distance, 1, rank);

    private BigInteger Price(int wish, bool isBroken, int dark, bool isChange, int distance, int opened, int rank)
    {
        var price = (BigInteger)(isBroken ? 1 : 0);
        price = (price * units) + dark;
        price = (price * changes) + (isChange ? 1 : 0);
        price = (price * distances) + distance;
        price = (price * changes) + opened;
        return (price * weights[0]) + (rank * weights[wish + 1]);
    }
}
