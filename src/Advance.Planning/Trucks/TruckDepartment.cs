using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Adds up what the shop pulls.</summary>
public static class TruckDepartment
{
    // Policy "weight margin": nothing on what was weighed, 5 % on a maker's figure, 10 % on a guess and on what nobody says how it is known.
    private static readonly Figure<double> NoMargin = Figure.Policy("weight-margin", 1.0);
    private static readonly Figure<double> MakersMargin = Figure.Policy("weight-margin", 1.05);
    private static readonly Figure<double> GuessMargin = Figure.Policy("weight-margin", 1.10);

    /// <summary>Weight and count of the pull list. Cases are not in it yet.</summary>
    public static LoadPlan Settle(StockPlan pull)
    {
        var weight = Sum.Of("weight pulled", "W = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", pull.Lines.Select(WeightOf))
            .Gives(terms => terms.Values.Aggregate(Mass.Zero, (sum, mass) => sum + mass));
        var pieces = Sum.Of("pieces pulled", "N = Σ tᵢ", Publication.Arithmetic)
            .PutAll("tᵢ", pull.Lines.Select(line => line.Total))
            .Gives(terms => terms.Values.Sum());
        return new LoadPlan(
            weight, pieces, [.. pull.Lines.Where(line => line.Kind?.Weight is not { IsKnown: true }).Select(line => line.Item)]);
    }

    private static Figure<Mass> WeightOf(StockLine line) =>
        Sum.Of($"weight of {line.Item}", "w = t · m · g", Publication.CommonPractice)
            .Put("t", line.Total)
            .Put("m", line.Kind?.Weight is { } given ? Figure.From(given) : new Figure<Mass>(null, Doubts.None, Reason.Derived.It))
            .Put("g", Margin(line.Kind?.Weight?.How))
            .Gives((count, mass, margin) => mass * count * margin);

    private static Figure<double> Margin(Known? how) => how switch
    {
        Known.Weighed => NoMargin,
        Known.Maker => MakersMargin,
        _ => GuessMargin,
    };
}
