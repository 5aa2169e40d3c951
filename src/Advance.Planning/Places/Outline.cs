using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>The outline of a deck, in metres: its downstage edge runs from -w/2 to w/2 at y = 0.</summary>
/// <param name="Width">Across, more than 0.</param>
/// <param name="Depth">Up and down the stage, more than 0.</param>
public readonly record struct Outline(double Width, double Depth)
{
    private const double Slack = 1e-9;

    /// <summary>Whether a spot lies on the deck; its edges belong to it.</summary>
    public bool Holds(Spot spot) =>
        Math.Abs(spot.X) <= (Width / 2) + Slack && spot.Y >= -Slack && spot.Y <= Depth + Slack;

    /// <summary>The edge nearest to a spot, and how far it is from there: more than 0 outside the deck, less inside.</summary>
    public (StageEdges Edge, double Beyond) Nearest(Spot spot)
    {
        var beyond = Beyond(spot, new Footprint(0, 0), turn: 0);
        return beyond.MaxBy(edge => edge.By);
    }

    /// <summary>
    /// How far a thing reaches over an edge, whichever side of it its middle is on; 0 where it is all on the deck or all beside it. For a
    /// thing on the deck that is how far it hangs over; for one on the floor how far the deck is in its way.
    /// </summary>
    public (StageEdges Edge, double By) Straddled(Spot middle, Footprint covers, double turn)
    {
        var over = Beyond(middle, covers, turn).MaxBy(edge => edge.By);
        if (Holds(middle))
        {
            return over.By > 0 ? over : default;
        }

        var by = Overlap(middle, covers, turn);
        return by > 0 ? (Nearest(middle).Edge, by) : default;
    }

    // How far the outermost corner of a thing lies beyond each edge.
    private IReadOnlyList<(StageEdges Edge, double By)> Beyond(Spot middle, Footprint covers, double turn)
    {
        var (halfX, halfY) = Reach(covers, turn);
        return
        [
            (StageEdges.Front, halfY - middle.Y),
            (StageEdges.Rear, middle.Y + halfY - Depth),
            (StageEdges.StageRight, halfX - middle.X - (Width / 2)),
            (StageEdges.StageLeft, middle.X + halfX - (Width / 2)),
        ];
    }

    // Two rectangles are apart where one of their four directions parts them; else the least overlap is how far they stand in each other.
    private double Overlap(Spot middle, Footprint covers, double turn)
    {
        var (x, y) = (middle.X, middle.Y - (Depth / 2));
        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        var (halfX, halfY) = Reach(covers, turn);
        var (deckAcross, deckAlong) = (Turned(Width, Depth, sin, cos), Turned(Depth, Width, sin, cos));
        return new[]
        {
            (Width / 2) + halfX - Math.Abs(x),
            (Depth / 2) + halfY - Math.Abs(y),
            deckAcross + (covers.Width / 2) - Math.Abs((x * cos) - (y * sin)),
            deckAlong + (covers.Depth / 2) - Math.Abs((x * sin) + (y * cos)),
        }.Min();
    }

    private static (double HalfX, double HalfY) Reach(Footprint covers, double turn)
    {
        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        return (Turned(covers.Width, covers.Depth, sin, cos), Turned(covers.Depth, covers.Width, sin, cos));
    }

    private static double Turned(double along, double across, double sin, double cos) => ((along * Math.Abs(cos)) + (across * Math.Abs(sin))) / 2;
}
