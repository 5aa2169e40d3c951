using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Where the holes of a hang's frame are, seen from above: its place is that of its hole, of two the middle between them; ahead is where it aims.</summary>
internal static class HangSpots
{
    /// <summary>Of one of two holes.</summary>
    /// <param name="stack">Whose.</param>
    /// <param name="hole">The hole.</param>
    /// <param name="other">The other one that it hangs by.</param>
    /// <param name="tilt">Of its frame, nose down positive.</param>
    public static Spot? Of(StackPlan stack, FrameHole hole, FrameHole other, Angle tilt)
    {
        var ahead = (Ahead(hole, tilt) - Ahead(other, tilt)) / 2;
        var (sin, cos) = Math.SinCos(stack.Turn * Math.PI / 180);
        return stack.Spot?.Plus(-ahead * sin, -ahead * cos);
    }

    /// <summary>Of a pick, before anybody knows what it carries; null where its hole, its tilt or its place is not known.</summary>
    /// <param name="hang">What holds it.</param>
    /// <param name="stack">Its boxes.</param>
    /// <param name="pick">Which, in the order written.</param>
    public static (Spot? Spot, Doubts RestsOn) Before(PlacedHang hang, StackPlan stack, int pick)
    {
        if (hang.Picks.Count == 1)
        {
            return (stack.Spot, stack.RestsOn);
        }

        var holes = hang.Flown.Picks.Select(one => HoleOf(stack, one.Hole)).ToList();
        var doubts = holes.OfType<FrameHole>().Aggregate(stack.RestsOn.With(Doubts.Of(hang.Flown.Tilt?.Doubt)), (sum, hole) => sum.With(HangHolding.RestsOn(hole)));
        return holes.Count == 2 && holes.TrueForAll(hole => hole is { Behind.IsKnown: true, Above.IsKnown: true }) && hang.Flown.Tilt is { IsKnown: true } tilt
            ? (Of(stack, holes[pick]!, holes[1 - pick]!, tilt.Value), doubts)
            : (null, doubts);
    }

    private static FrameHole? HoleOf(StackPlan stack, Given<string>? hole) => hole is { IsKnown: true } named
        ? stack.Frame?.Piece.Kind?.FlyingFrame?.Holes.FirstOrDefault(one => string.Equals(one.Name, named.Value, StringComparison.OrdinalIgnoreCase))
        : null;

    private static double Ahead(FrameHole hole, Angle tilt) => default(SidePoint).Along(tilt.Radians, -hole.Behind.Value.Meters, -hole.Above.Value.Meters).X;
}
