using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Adds up what the shop pulls.</summary>
public static class TruckDepartment
{
    private const string MarginPolicy = "weight-margin";

    /// <summary>Weight and count of the pull list. Cases are not in it yet.</summary>
    public static LoadPlan Settle(StockPlan pull, Policies policies)
    {
        var weight = Sum.Of("weight pulled", "W = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", pull.Lines.Select(line => WeightOf(line, policies.WeightMargin)))
            .Gives(terms => terms.Values.Aggregate(Mass.Zero, (sum, mass) => sum + mass));
        var pieces = Sum.Of("pieces pulled", "N = Σ tᵢ", Publication.Arithmetic)
            .PutAll("tᵢ", pull.Lines.Select(line => line.Total))
            .Gives(terms => terms.Values.Sum());
        return new LoadPlan(
            weight, pieces, [.. pull.Lines.Where(line => line.Kind?.Weight is not { IsKnown: true }).Select(line => line.Item)]);
    }

    private static Figure<Mass> WeightOf(StockLine line, WeightMargins margins) =>
        Sum.Of($"weight of {line.Item}", "w = t · m · (1 + g / 100)", Publication.CommonPractice)
            .Put("t", line.Total)
            .Put("m", line.Kind?.Weight is { } given ? Figure.From(given) : new Figure<Mass>(null, Doubts.None, Reason.Derived.It))
            .Put("g", Figure.Policy(MarginPolicy, margins.On(line.Kind?.Weight?.How ?? Known.Estimated)))
            .Gives((count, mass, margin) => mass * count * (1 + (margin / 100)));
}
