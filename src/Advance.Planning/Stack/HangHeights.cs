using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How high the boxes of a hang are, as their leads are reckoned: as if it hung straight down, which is never too little.</summary>
internal static class HangHeights
{
    // A lead up to a hang whose trim nobody knows is taken as long as to one of a usual trim; so is one to a box that nobody measured. Common practice, no source.
    private const double UsualTrim = 6;
    private const double UsualBox = 0.4;

    private static readonly Figure<Length> Unknown = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>The open questions about how high it hangs.</summary>
    public static Doubts RestsOn(Stack hang) => Doubts.Of(hang.Flown?.Trim?.Doubt).With(Doubts.Of(hang.Flown?.PickTrim?.Doubt));

    /// <summary>From its upper pin to its lower; as high as it is where its maker says no more.</summary>
    public static Figure<Length> PinToPin(Kind? kind) => kind?.Loudspeaker?.Flying is { PinToPin: { IsKnown: true } pins } ? Figure.From(pins) : StackFigures.HeightOf(kind);

    /// <summary>Its lowest edge above the floor, where that was said; unknown where only its pick was.</summary>
    public static Figure<Length> Bottom(Stack hang, Ground ground) => hang.Flown?.Trim is { } trim ? AboveFloor(trim, ground) : Unknown;

    /// <summary>A height above the floor.</summary>
    public static Figure<Length> AboveFloor(Given<HeightFrom> height, Ground ground) => height.Is(out var written) && written.Above == HeightFrom.Deck
        ? Sum.Of("trim above the floor", "t = d + h", Publication.Arithmetic)
            .Put("d", ground.DeckHeight)
            .Put("h", Figure.From(height.Select(one => one.Height)))
            .Gives((deck, up) => deck + up)
        : Ground.HeightOf(height);

    /// <summary>How high the middle of a hang is above what is under it, in metres; null where nobody says how high it hangs.</summary>
    public static double? Middle(StackPlan hang) =>
        hang.LeadHeights.Count > 0 && (hang.Stack.Flown is { Trim.IsKnown: true } or { PickTrim.IsKnown: true }) ? hang.LeadHeights.Average() : null;

    /// <summary>How high the middle of each box is above what is under it, from the top, in metres.</summary>
    public static IReadOnlyList<double> Of(Stack hang, IEnumerable<Kind?> boxes, Ground ground, Spot? spot)
    {
        var tall = Tall(boxes);
        var under = Under(hang, tall, ground, spot);
        return [.. tall.Select((one, index) => under + tall.Skip(index + 1).Sum() + (one / 2))];
    }

    /// <summary>How high its frame is above what is under it, in metres.</summary>
    public static double Top(Stack hang, IEnumerable<Kind?> boxes, Ground ground, Spot? spot)
    {
        var tall = Tall(boxes);
        return Under(hang, tall, ground, spot) + tall.Sum();
    }

    private static List<double> Tall(IEnumerable<Kind?> boxes) => [.. boxes.Select(kind => PinToPin(kind).Value?.Meters ?? UsualBox)];

    private static double Under(Stack hang, List<double> tall, Ground ground, Spot? spot)
    {
        var lowest = hang.Flown?.PickTrim is { } pick ? AboveFloor(pick, ground).Value?.Meters - tall.Sum() : Bottom(hang, ground).Value?.Meters;
        return Math.Max(0, (lowest ?? UsualTrim) - (ground.HeightAt(spot).Value?.Meters ?? 0));
    }
}
