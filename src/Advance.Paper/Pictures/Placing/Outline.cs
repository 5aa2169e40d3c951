namespace Advance.Paper.Pictures.Placing;

/// <summary>A row of points, in 0.1 mm of the paper; closed ones have an inside.</summary>
internal sealed class Outline
{
    private readonly (int X, int Y)[] points;
    private readonly bool isClosed;

    public Outline((int X, int Y)[] points, bool isClosed)
    {
        this.points = points;
        this.isClosed = isClosed;
        Bounds = Box.Nothing;
        foreach (var (x, y) in points)
        {
            Bounds = Bounds.With(x, y);
        }
    }

    public Box Bounds { get; }

    /// <summary>True when a line of it, or its inside, lies in the box.</summary>
    public bool Meets(Box box)
    {
        var b = Bounds;
        if (b.Left > box.Right || b.Right < box.Left || b.Top > box.Bottom || b.Bottom < box.Top)
        {
            return false;
        }

        return LineMeets(box) || (isClosed && Holds(box.MiddleX, box.MiddleY));
    }

    /// <summary>True when a line of it lies in the box.</summary>
    public bool LineMeets(Box box)
    {
        if (points.Length == 1)
        {
            return box.Holds(Bounds);
        }

        for (var i = 0; i + 1 < points.Length; i++)
        {
            if (Side(i, i + 1).Meets(box))
            {
                return true;
            }
        }

        return isClosed && points.Length > 2 && Side(points.Length - 1, 0).Meets(box);
    }

    /// <summary>True when the line touches it or lies in it.</summary>
    public bool Meets(Segment line)
    {
        for (var i = 0; i + 1 < points.Length; i++)
        {
            if (Side(i, i + 1).Crosses(line))
            {
                return true;
            }
        }

        return isClosed && ((points.Length > 2 && Side(points.Length - 1, 0).Crosses(line)) || Holds(line.X1, line.Y1));
    }

    /// <summary>A line from its beginning to where it first comes to this outline; null when it never does.</summary>
    public Segment? Meeting(Segment line)
    {
        Segment? nearest = null;
        var sides = isClosed && points.Length > 2 ? points.Length : points.Length - 1;
        for (var i = 0; i < sides; i++)
        {
            if (Side(i, (i + 1) % points.Length).CutOff(line) is { } cut && (nearest is null || cut.LengthSquared < nearest.Value.LengthSquared))
            {
                nearest = cut;
            }
        }

        return nearest;
    }

    private Segment Side(int from, int to) => new(points[from].X, points[from].Y, points[to].X, points[to].Y);

    /// <summary>True when a point lies inside: a ray to the right leaves the outline an odd number of times.</summary>
    public bool Holds(int x, int y)
    {
        if (!isClosed)
        {
            return false;
        }

        var isInside = false;
        for (int i = 0, j = points.Length - 1; i < points.Length; j = i++)
        {
            var (xi, yi) = points[i];
            var (xj, yj) = points[j];
            if ((yi > y) != (yj > y) && x - xi < (double)(xj - xi) * (y - yi) / (yj - yi))
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }
}
