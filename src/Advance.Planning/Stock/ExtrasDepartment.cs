using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Loose things that somebody wants to have there.</summary>
public static class ExtrasDepartment
{
    private const string Name = "extras";

    /// <summary>Whether a piece is a loose one on hire: it covers a shortage, as a hired piece that is in use does not.</summary>
    public static bool IsCover(Piece piece) =>
        piece is { Department: Name, Why: Need.AskedFor } && piece.From.Is(out var owner) && owner.Kind == OwnerKind.Hire;

    /// <summary>Whether a piece is a loose one, or comes with a loose one.</summary>
    public static bool IsLoose(Piece piece) => piece.Department == Name;

    /// <summary>One piece for each that was asked for; a row without a known count is one piece.</summary>
    public static IReadOnlyList<Piece> Place(Gig gig, Stock stock)
    {
        var pieces = new Pieces(Name, stock);
        foreach (var extra in gig.Extras)
        {
            for (var number = 1; number <= extra.Count.Or(1); number++)
            {
                pieces.Ask(pieces.At(extra.Item) / number, extra.Item, extra.Item, extra.From, spot: null, extra.At);
            }
        }

        return pieces.Made;
    }
}
