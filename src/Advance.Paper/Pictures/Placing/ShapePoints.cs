namespace Advance.Paper.Pictures.Placing;

/// <summary>The points of shapes, by which extents and obstacles are found. Curves are taken as short lines.</summary>
internal static class ShapePoints
{
    private const int CircleSides = 24;

    /// <summary>The outline of a shape in the scene's millimetres; nothing for what has its size on the paper.</summary>
    public static (Point[] Points, bool IsClosed)? Of(Shape shape) => shape switch
    {
        Line line => ([line.From, line.To], false),
        Polyline poly => ([.. poly.Points], poly.Closed),
        Rectangle rectangle => (Corners(rectangle), true),
        Circle circle => (OnCircle(circle.Middle, circle.Radius, 0, 360), true),
        Arc arc => (OnArc(arc), arc.Wedge),
        Curve curve => (OnCurve(curve), false),
        _ => null,
    };

    /// <summary>The corners, clockwise from what is upper left before it is turned.</summary>
    public static Point[] Corners(Rectangle r)
    {
        var (sin, cos) = Math.SinCos(r.Turn * Math.PI / 180);
        double w = r.Width / 2, h = r.Height / 2;
        return [Corner(-w, -h), Corner(w, -h), Corner(w, h), Corner(-w, h)];

        Point Corner(double x, double y) => r.Middle.Plus((x * cos) - (y * sin), (x * sin) + (y * cos));
    }

    private static Point[] OnArc(Arc arc)
    {
        var points = OnCircle(arc.Middle, arc.Radius, arc.Start, Math.Clamp(arc.Sweep, -360, 360));
        return arc.Wedge ? [arc.Middle, .. points] : points;
    }

    private static Point[] OnCircle(Point middle, double radius, double start, double sweep)
    {
        var points = new Point[CircleSides + 1];
        for (var i = 0; i <= CircleSides; i++)
        {
            var (sin, cos) = Math.SinCos((start + (sweep * i / CircleSides)) * Math.PI / 180);
            points[i] = middle.Plus(radius * cos, radius * sin);
        }

        return points;
    }

    private static Point[] OnCurve(Curve c)
    {
        var points = new Point[CircleSides + 1];
        for (var i = 0; i <= CircleSides; i++)
        {
            double t = (double)i / CircleSides, u = 1 - t;
            double a = u * u * u, b = 3 * u * u * t, d = 3 * u * t * t, e = t * t * t;
            points[i] = new Point(
                (a * c.From.X) + (b * c.First.X) + (d * c.Second.X) + (e * c.To.X),
                (a * c.From.Y) + (b * c.First.Y) + (d * c.Second.Y) + (e * c.To.Y));
        }

        return points;
    }
}
