using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Compares the decks of a stage with its size.</summary>
internal static class DeckCount
{
    /// <summary>The decks of a stage; null where it is built in, or nobody says.</summary>
    public static DeckPlan? Of(Stage stage, Address address, Stock stock)
    {
        if (stage.Decks is not { } decks)
        {
            return null;
        }

        var kind = stock.Find(decks.Item);
        var size = kind?.Size is { } given && (!given.IsKnown || (given.Value.Width.Meters > 0 && given.Value.Depth.Meters > 0)) ? given : default;
        return new DeckPlan(address / "decks", stage, decks, kind, Wanted(stage.Size, size), CanFill(stage.Size, size));
    }

    private static Figure<double> Wanted(Given<Size> stage, Given<Size> deck) =>
        Sum.Of("decks wanted", "n = W · D / (w · d)", Publication.Arithmetic)
            .Put("W", Figure.From(stage.Select(size => size.Width)))
            .Put("D", Figure.From(stage.Select(size => size.Depth)))
            .Put("w", Figure.From(deck.Select(size => size.Width)))
            .Put("d", Figure.From(deck.Select(size => size.Depth)))
            .Gives((width, depth, @long, wide) => width.Meters * depth.Meters / (@long.Meters * wide.Meters));

    private static bool? CanFill(Given<Size> stage, Given<Size> deck) => stage.Is(out var whole) && deck.Is(out var one) && Tenths(one.Width) > 0 && Tenths(one.Depth) > 0 && Tenths(whole.Width) > 0 && Tenths(whole.Depth) > 0
        ? Tiling.Fills(Tenths(whole.Width), Tenths(whole.Depth), Tenths(one.Width), Tenths(one.Depth))
        : null;

    // Of a millimetre: a deck of 8 x 4 ft is no whole number of millimetres, but one of tenths.
    private static int Tenths(Length length) => (int)Math.Round(length.Millimeters * 10, MidpointRounding.AwayFromZero);
}
