using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Weights with the margin that hangs on how each is known.</summary>
internal static class Weights
{
    private const string MarginPolicy = "weight-margin";

    /// <summary>Of so many pieces of a kind; unknown where nobody knows what one weighs.</summary>
    public static Figure<Mass> Of(string item, Kind? kind, Figure<int> count, WeightMargins margins) =>
        Sum.Of($"weight of {item}", "w = t · m · (1 + g / 100)", Publication.CommonPractice)
            .Put("t", count)
            .Put("m", Stated(kind))
            .Put("g", Margin(kind, margins))
            .Gives((pieces, mass, margin) => mass * pieces * (1 + (margin / 100)));

    /// <summary>Of one piece of a kind.</summary>
    public static Figure<Mass> OfOne(string item, Kind? kind, WeightMargins margins) =>
        Sum.Of($"weight of one {item}", "w = m · (1 + g / 100)", Publication.CommonPractice)
            .Put("m", Stated(kind))
            .Put("g", Margin(kind, margins))
            .Gives((mass, margin) => mass * (1 + (margin / 100)));

    private static Figure<Mass> Stated(Kind? kind) =>
        kind?.Weight is { } given ? Figure.From(given) : new Figure<Mass>(null, Doubts.None, Reason.Derived.It);

    private static Figure<double> Margin(Kind? kind, WeightMargins margins) =>
        Figure.Policy(MarginPolicy, margins.On(kind?.Weight?.How ?? Known.Estimated));
}
