using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Heights and weights of a stack.</summary>
internal static class StackFigures
{
    private const string MarginPolicy = "weight-margin";

    private static readonly Figure<Length> Unknown = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>How high one box is; unknown where its kind, or its third dimension, is.</summary>
    public static Figure<Length> HeightOf(Kind? kind) =>
        kind?.Size is { } given && (!given.IsKnown || given.Value.Height is not null)
            ? Figure.From(given.Select(size => size.Height!.Value))
            : Unknown;

    /// <summary>How high boxes are together.</summary>
    public static Figure<Length> Together(string name, IEnumerable<Figure<Length>> heights) =>
        Sum.Of(name, "H = Σ hᵢ", Publication.Arithmetic)
            .PutAll("hᵢ", heights)
            .Gives(terms => terms.Values.Aggregate(Length.Zero, (sum, height) => sum + height));

    /// <summary>How high above the floor it ends.</summary>
    public static Figure<Length> Top(Figure<Length> foot, Figure<Length> height) =>
        Sum.Of("top above floor", "T = B + H", Publication.Arithmetic)
            .Put("B", foot)
            .Put("H", height)
            .Gives((below, above) => below + above);

    /// <summary>What pieces weigh together, each with the margin of how its weight is known.</summary>
    public static Figure<Mass> Weight(IEnumerable<Piece> pieces, WeightMargins margins, string name = "weight of a stack") =>
        Sum.Of(name, "W = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", pieces.Select(piece => WeightOf(piece, margins)))
            .Gives(terms => terms.Values.Aggregate(Mass.Zero, (sum, mass) => sum + mass));

    private static Figure<Mass> WeightOf(Piece piece, WeightMargins margins) =>
        Sum.Of($"weight of {piece.Item}", "w = m · (1 + g / 100)", Publication.CommonPractice)
            .Put("m", piece.Kind?.Weight is { } given ? Figure.From(given) : new Figure<Mass>(null, Doubts.None, Reason.Derived.It))
            .Put("g", Figure.Policy(MarginPolicy, margins.On(piece.Kind?.Weight?.How ?? Known.Estimated)))
            .Gives((mass, margin) => mass * (1 + (margin / 100)));
}
