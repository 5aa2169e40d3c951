using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Weight that stands for kit that is not chosen yet. What is pulled already of that department is taken off it.</summary>
/// <param name="Row">As written; of several for the same, the first.</param>
/// <param name="Left">What is left of it; unknown where it is, or where nobody knows what is pulled already weighs.</param>
public sealed record WeightAllowance(Allowance Row, Figure<Mass> Left)
{
    /// <summary>Its number, under its address.</summary>
    public Stated Figure => Stated.Of(Address.Of("load") / "allowance" / Row.What, $"allowance for {Row.What}, weight that is left of it", Left);

    /// <summary>Those of a gig that are weights, or may be.</summary>
    public static IReadOnlyList<WeightAllowance> Of(Gig gig, IReadOnlyList<StockLine> lines, Policies policies) =>
    [
        .. gig.Allowances.Where(row => row.MayWeigh)
            .GroupBy(row => row.What.Trim().ToUpperInvariant(), StringComparer.Ordinal)
            .Select(group => new WeightAllowance(group.First(), LeftOf([.. group], lines, policies))),
    ];

    private static Figure<Mass> LeftOf(IReadOnlyList<Allowance> rows, IReadOnlyList<StockLine> lines, Policies policies)
    {
        var what = rows[0].What;
        return Sum.Of($"allowance for {what}, what is left", "w = max(0, W - p)", Publication.CommonPractice)
            .Put("W", Total($"allowance for {what}", "W = Σ aᵢ", "aᵢ", rows.Select(Written)))
            .Put("p", Total($"{what} that is pulled already", "p = Σ wᵢ", "wᵢ", lines.Where(line => IsOf(line, what)).Select(line => Weights.Of(line.Item, line.Kind, line.Total, policies.WeightMargin))))
            .Gives((all, pulled) => Mass.FromKilograms(Math.Max(0, all.Kilograms - pulled.Kilograms)));
    }

    private static Figure<Mass> Total(string name, string formula, string symbol, IEnumerable<Figure<Mass>> parts) =>
        Sum.Of(name, formula, Publication.Arithmetic)
            .PutAll(symbol, parts)
            .Gives(terms => terms.Values.Aggregate(Mass.Zero, (sum, mass) => sum + mass));

    private static Figure<Mass> Written(Allowance row) =>
        row.Weight is { } given ? Domain.Figures.Figure.From(given) : new Figure<Mass>(null, Doubts.Of(row.Doubt), Reason.Derived.It);

    private static bool IsOf(StockLine line, string what)
    {
        var department = what.Trim();
        return line.Kind is { } kind && string.Equals(kind.Department, string.Equals(department, "lighting", StringComparison.OrdinalIgnoreCase) ? "lights" : department, StringComparison.OrdinalIgnoreCase);
    }
}
