using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Loose things that somebody wants to have there.</summary>
public static class ExtrasDepartment
{
    private const string Name = "extras";

    /// <summary>One piece for each that was asked for; a row without a known count is one piece.</summary>
    public static IReadOnlyList<Piece> Place(Gig gig, Domain.Stocks.Stock stock)
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
