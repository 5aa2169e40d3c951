namespace Advance.Paper.Pictures.Placing;

/// <summary>What a scene takes up, in its own millimetres.</summary>
internal readonly record struct Extent(double Left, double Top, double Right, double Bottom)
{
    // Twenty kilometres: no paper has a ratio for more.
    private const double Largest = 2e7;

    public double Width => Right - Left;

    public double Height => Bottom - Top;

    /// <summary>The extent of all shapes; null when there are none, or when a number in them is not finite.</summary>
    public static Extent? Of(Scene scene)
    {
        var extent = new Extent(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var layer in scene.Layers)
        {
            foreach (var shape in layer.Shapes)
            {
                extent = extent.With(shape);
            }
        }

        return extent.Left <= extent.Right && extent.Width + extent.Height is > 0 and < Largest ? extent : null;
    }

    private Extent With(Shape shape)
    {
        var extent = this;
        switch (shape)
        {
            case Symbol symbol:
                foreach (var inner in symbol.Shapes)
                {
                    extent = extent.With(inner);
                }

                return extent;
            case Lettering lettering:
                return With(lettering.At);
            case Dimension dimension:
                return With(dimension.From).With(dimension.To);
        }

        if (ShapePoints.Of(shape) is { } outline)
        {
            foreach (var point in outline.Points)
            {
                extent = extent.With(point);
            }
        }

        return extent;
    }

    private Extent With(Point p) =>
        new(Least(Left, p.X), Least(Top, p.Y), Greatest(Right, p.X), Greatest(Bottom, p.Y));

    // Spelled out so that what is not a number stays in and makes the extent unfit.
    private static double Least(double a, double b) => double.IsNaN(b) || b < a ? b : a;

    private static double Greatest(double a, double b) => double.IsNaN(b) || b > a ? b : a;
}
