namespace Advance.Planning;

/// <summary>
/// What goes round a square corner between two ways. A rectangle is turned with both ends of its outer side on the outer walls, x along the
/// way out and y along the way in: its outer side is x·sin θ + y·cos θ = L·sin θ·cos θ, and the inner corner (a, b) lies
/// a·sin θ + b·cos θ − L·sin θ·cos θ away from it. That must be at least its width w for every angle θ from 0 to 90 degrees, so
/// L ≤ min (a·sin θ + b·cos θ − w) / (sin θ·cos θ). For w = 0 this is the ladder problem of the textbooks, (a^⅔ + b^⅔)^1.5;
/// for a = b the least is at 45 degrees, 2·√2·a − 2·w. Without turning, it passes where one side goes through either way.
/// </summary>
public static class Corner
{
    private const int Steps = 200;

    /// <summary>The angle at which a rectangle of that width has the least room, in radians.</summary>
    /// <param name="wayIn">Clear width of the way in, metres, more than 0.</param>
    /// <param name="wayOut">Clear width of the way out, metres, more than 0.</param>
    /// <param name="width">Of the rectangle, metres, less than both.</param>
    public static double Tightest(double wayIn, double wayOut, double width)
    {
        // The room has one least value between its two infinite ends: a third of the span is dropped in each step.
        var (low, high) = (1e-6, (Math.PI / 2) - 1e-6);
        for (var step = 0; step < Steps; step++)
        {
            var (left, right) = (low + ((high - low) / 3), high - ((high - low) / 3));
            if (Room(wayIn, wayOut, width, left) <= Room(wayIn, wayOut, width, right))
            {
                high = right;
            }
            else
            {
                low = left;
            }
        }

        return (low + high) / 2;
    }

    /// <summary>How long a rectangle may be at that angle, in metres.</summary>
    public static double Room(double wayIn, double wayOut, double width, double angle) =>
        ((wayIn * Math.Sin(angle)) + (wayOut * Math.Cos(angle)) - width) / (Math.Sin(angle) * Math.Cos(angle));

    /// <summary>Whether a rectangle goes round, turned or not.</summary>
    /// <param name="wayIn">Clear width of the way in, metres.</param>
    /// <param name="wayOut">Clear width of the way out, metres.</param>
    /// <param name="length">The longer side, metres.</param>
    /// <param name="width">The shorter side, metres.</param>
    public static bool Passes(double wayIn, double wayOut, double length, double width)
    {
        if (width > Math.Min(wayIn, wayOut))
        {
            return false;
        }

        return length <= Math.Max(wayIn, wayOut) || length <= Room(wayIn, wayOut, width, Tightest(wayIn, wayOut, width));
    }
}
