namespace Advance.Paper.Pictures.Placing;

/// <summary>A straight line between two points, in 0.1 mm of the paper.</summary>
internal readonly record struct Segment(int X1, int Y1, int X2, int Y2)
{
    public Box Bounds => new(Math.Min(X1, X2), Math.Min(Y1, Y2), Math.Max(X1, X2), Math.Max(Y1, Y2));

    public long LengthSquared => ((long)(X2 - X1) * (X2 - X1)) + ((long)(Y2 - Y1) * (Y2 - Y1));

    /// <summary>True when a part of the line lies inside of the box.</summary>
    public bool Meets(Box box)
    {
        var bounds = Bounds;
        if (bounds.Left >= box.Right || bounds.Right <= box.Left || bounds.Top >= box.Bottom || bounds.Bottom <= box.Top)
        {
            return false;
        }
        // The corners of a box that the line passes by all lie on one side of it.
        long a = Side(box.Left, box.Top), b = Side(box.Right, box.Top), c = Side(box.Left, box.Bottom), d = Side(box.Right, box.Bottom);
        return !((a >= 0 && b >= 0 && c >= 0 && d >= 0) || (a <= 0 && b <= 0 && c <= 0 && d <= 0));
    }

    /// <summary>True when the lines have a point in common, ends included.</summary>
    public bool Crosses(Segment other)
    {
        if (!Overlaps(Bounds, other.Bounds))
        {
            return false;
        }

        long a = Side(other.X1, other.Y1), b = Side(other.X2, other.Y2);
        long c = other.Side(X1, Y1), d = other.Side(X2, Y2);
        return (a <= 0 || b <= 0) && (a >= 0 || b >= 0) && (c <= 0 || d <= 0) && (c >= 0 || d >= 0);
    }

    /// <summary>Another line from its beginning to where it comes to this one; null when they do not cross, or lie in one another.</summary>
    public Segment? CutOff(Segment other)
    {
        long dx = X2 - X1, dy = Y2 - Y1, ox = other.X2 - other.X1, oy = other.Y2 - other.Y1;
        var cross = (ox * dy) - (oy * dx);
        if (cross == 0 || !Crosses(other))
        {
            return null;
        }

        var share = (((X1 - other.X1) * dy) - ((Y1 - other.Y1) * dx)) / (double)cross;
        return other with
        {
            X2 = other.X1 + (int)Math.Round(ox * share, MidpointRounding.AwayFromZero),
            Y2 = other.Y1 + (int)Math.Round(oy * share, MidpointRounding.AwayFromZero),
        };
    }

    /// <summary>The line with its end drawn back.</summary>
    /// <param name="by">In 0.1 mm; a line that is not longer stays as it is.</param>
    public Segment Shortened(int by)
    {
        var length = Math.Sqrt(LengthSquared);
        if (length <= by)
        {
            return this;
        }

        var share = (length - by) / length;
        return this with
        {
            X2 = X1 + (int)Math.Round((X2 - X1) * share, MidpointRounding.AwayFromZero),
            Y2 = Y1 + (int)Math.Round((Y2 - Y1) * share, MidpointRounding.AwayFromZero),
        };
    }

    private static bool Overlaps(Box a, Box b) => a.Left <= b.Right && b.Left <= a.Right && a.Top <= b.Bottom && b.Top <= a.Bottom;

    private long Side(int x, int y) => ((long)(X2 - X1) * (y - Y1)) - ((long)(Y2 - Y1) * (x - X1));
}
