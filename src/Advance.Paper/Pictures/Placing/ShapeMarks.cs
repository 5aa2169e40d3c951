using Advance.Paper.Layout;
using Advance.Paper.Setting;

namespace Advance.Paper.Pictures.Placing;

/// <summary>Turns shapes of a scene into marks on the paper.</summary>
internal sealed class ShapeMarks(Frame frame, Composer composer)
{
    // A cubic curve that stands for a quarter of a circle.
    private const double Kappa = 0.5522847498;

    public void Draw(Shape shape, List<Mark> marks)
    {
        switch (shape)
        {
            case Symbol symbol:
                foreach (var inner in symbol.Shapes)
                {
                    Draw(inner, marks);
                }

                break;
            case Lettering lettering:
                marks.AddRange(LetteringMarks.Of(lettering, frame, composer));
                break;
            case Dimension dimension:
                marks.AddRange(DimensionMarks.Of(dimension, frame, composer));
                break;
            default:
                if (Steps(shape) is { Length: > 0 } steps)
                {
                    marks.Add(Inked(new PathMark(steps), shape.Pen) with { Fill = shape.Fill });
                }

                break;
        }
    }

    public static PathMark Inked(PathMark path, Pen pen) => path with
    {
        Weight = Weight(pen.Weight),
        Shade = pen.Weight == LineWeight.Hair ? Shade.Hair : Shade.Ink,
        Dash = pen.Dash,
    };

    private static int Weight(LineWeight weight) => weight switch
    {
        LineWeight.None => 0,
        LineWeight.Hair => Mil.FromMm(0.15),
        LineWeight.Thin => Mil.FromMm(0.18),
        LineWeight.Normal => Mil.FromMm(0.35),
        _ => Mil.FromMm(0.8),
    };

    private PathStep[] Steps(Shape shape) => shape switch
    {
        Circle circle => Round(circle.Middle, circle.Radius),
        Arc arc => Part(arc),
        Curve curve => [Step(PathStepKind.Move, curve.From), Bend(curve.First, curve.Second, curve.To)],
        Rectangle { CornerMm: > 0 } rectangle => Rounded(rectangle),
        _ => ShapePoints.Of(shape) is { } outline ? Straight(outline.Points, outline.IsClosed) : [],
    };

    private PathStep[] Straight(Point[] points, bool isClosed)
    {
        var steps = new List<PathStep>(points.Length + 1);
        foreach (var point in points)
        {
            steps.Add(Step(steps.Count == 0 ? PathStepKind.Move : PathStepKind.Line, point));
        }

        if (isClosed && steps.Count > 0)
        {
            steps.Add(steps[0] with { Kind = PathStepKind.Close });
        }

        return [.. steps];
    }

    private PathStep[] Round(Point m, double r)
    {
        var k = r * Kappa;
        var start = Step(PathStepKind.Move, m.Plus(r, 0));
        return
        [
            start,
            Bend(m.Plus(r, k), m.Plus(k, r), m.Plus(0, r)),
            Bend(m.Plus(-k, r), m.Plus(-r, k), m.Plus(-r, 0)),
            Bend(m.Plus(-r, -k), m.Plus(-k, -r), m.Plus(0, -r)),
            Bend(m.Plus(k, -r), m.Plus(r, -k), m.Plus(r, 0)),
            start with { Kind = PathStepKind.Close },
        ];
    }

    private PathStep[] Part(Arc arc)
    {
        var sweep = Math.Clamp(arc.Sweep, -360, 360);
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / 90));
        var each = sweep / pieces * Math.PI / 180;
        var handle = 4.0 / 3 * Math.Tan(each / 4) * arc.Radius;
        var angle = arc.Start * Math.PI / 180;
        var from = OnCircle(angle);
        var steps = new List<PathStep>();
        if (arc.Wedge)
        {
            steps.Add(Step(PathStepKind.Move, arc.Middle));
        }

        steps.Add(Step(arc.Wedge ? PathStepKind.Line : PathStepKind.Move, from));
        for (var i = 0; i < pieces; i++)
        {
            var to = OnCircle(angle + each);
            var (sin, cos) = Math.SinCos(angle);
            var (sinTo, cosTo) = Math.SinCos(angle + each);
            steps.Add(Bend(from.Plus(-sin * handle, cos * handle), to.Plus(sinTo * handle, -cosTo * handle), to));
            (from, angle) = (to, angle + each);
        }

        if (arc.Wedge)
        {
            steps.Add(steps[0] with { Kind = PathStepKind.Close });
        }

        return [.. steps];

        Point OnCircle(double a) => arc.Middle.Plus(arc.Radius * Math.Cos(a), arc.Radius * Math.Sin(a));
    }

    private PathStep[] Rounded(Rectangle rectangle)
    {
        var corners = ShapePoints.Corners(rectangle);
        var radius = Math.Min(rectangle.CornerMm / frame.Scale, Math.Min(rectangle.Width, rectangle.Height) / 2);
        var steps = new List<PathStep>();
        for (var i = 0; i < 4; i++)
        {
            var (before, here, after) = (corners[(i + 3) % 4], corners[i], corners[(i + 1) % 4]);
            var (from, to) = (Towards(here, before, radius), Towards(here, after, radius));
            steps.Add(Step(i == 0 ? PathStepKind.Move : PathStepKind.Line, from));
            steps.Add(Bend(Towards(from, here, radius * Kappa), Towards(to, here, radius * Kappa), to));
        }

        steps.Add(steps[0] with { Kind = PathStepKind.Close });
        return [.. steps];
    }

    private static Point Towards(Point from, Point to, double by)
    {
        var length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        return length <= 0 ? from : from.Plus((to.X - from.X) * by / length, (to.Y - from.Y) * by / length);
    }

    private PathStep Step(PathStepKind kind, Point point)
    {
        var (x, y) = frame.Mils(point);
        return new PathStep(kind, x, y);
    }

    private PathStep Bend(Point first, Point second, Point to)
    {
        var (x, y) = frame.Mils(to);
        var (x1, y1) = frame.Mils(first);
        var (x2, y2) = frame.Mils(second);
        return new PathStep(PathStepKind.Curve, x, y, x1, y1, x2, y2);
    }
}
