namespace Advance.Planning;

/// <summary>
/// What a port is worth while an act plays, and what it is worth to stay within the limits. Whatever such prices are, no choice costs less than
/// if each unit took what is cheapest with them: a bound, and with it a sign of options that no good choice has. Good prices are the dual
/// ones of the linear program; since any will do, its rounding does no harm: bounds are whole numbers, counted exactly.
/// </summary>
internal sealed class PortPrices
{
    // Prices are multiples of one part in so many.
    private const long Parts = 1 << 20;

    private readonly IReadOnlyList<List<PortOption>> left;
    private readonly long[][] priced;
    private readonly long bound;

    private PortPrices(PortProblem problem, IReadOnlyList<List<PortOption>> left, IReadOnlyDictionary<PortAim, long> limits, PortAim aim, PortProgram program)
    {
        this.left = left;
        var prices = program.Ports.ToDictionary(port => port.Key, port => Price(port.Value));
        var fines = program.Limits.ToDictionary(limit => limit.Key, limit => Price(limit.Value));
        priced =
        [
            .. left.Select((options, unit) => options.Select(option =>
                (option.Cost(aim) * Parts) + problem.Uses(unit, option).Sum(use => prices[use]) + fines.Sum(fine => fine.Value * option.Cost(fine.Key))).ToArray()),
        ];
        bound = priced.Sum(costs => costs.Min()) - prices.Values.Sum() - fines.Sum(fine => fine.Value * limits[fine.Key]);
    }

    /// <summary>No choice within the limits costs less.</summary>
    public long Least => (long)Math.Ceiling(bound / (decimal)Parts);

    /// <summary>Prices for an aim.</summary>
    /// <param name="problem">The units.</param>
    /// <param name="left">The options that may be chosen, by unit.</param>
    /// <param name="limits">What aims of more weight may cost at most.</param>
    /// <param name="aim">Any but the ports of shared sources, which are no sum over units.</param>
    public static PortPrices Of(PortProblem problem, IReadOnlyList<List<PortOption>> left, IReadOnlyDictionary<PortAim, long> limits, PortAim aim)
    {
        using var program = new PortProgram(problem, left, limits, aim);
        return new PortPrices(problem, left, limits, aim, program);
    }

    /// <summary>The options, by unit, that a choice of at most that cost may have.</summary>
    public List<PortOption>[] Within(long cost) =>
    [
        .. left.Select((options, unit) =>
        {
            var most = (cost * Parts) - bound + priced[unit].Min();
            return options.Where((_, index) => priced[unit][index] <= most).ToList();
        }),
    ];

    private static long Price(double dual) => Math.Max(0, (long)Math.Round(-dual * Parts, MidpointRounding.AwayFromZero));
}
