using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>Plain outlines, drawn from the real size of things. What a thing is, is always written beside it.</summary>
internal static class PlotSymbols
{
    private const double PersonRadius = 0.06;
    private const double CornerMm = 0.6;

    private static readonly Pen Overhead = new(LineWeight.Normal, Dash.Dashed);

    // Degrees, clockwise from stage left.
    private static readonly int[] Legs = [90, 210, 330];

    /// <summary>What something placed looks like, named by its label.</summary>
    public static Symbol Of(Placed thing, Label? label) =>
        new(thing.Address.Text, [.. Shapes(thing)]) { Label = label, IsArea = thing.Look is Look.Area or Look.Hang };

    /// <summary>A wedge with its mix on it; it faces upstage unless it is turned.</summary>
    public static Symbol Wedge(string id, Spot spot, string mix)
    {
        var middle = PlotScale.At(spot);
        var outline = new Polyline(
            [middle.Plus(-250, 150), middle.Plus(250, 150), middle.Plus(180, -150), middle.Plus(-180, -150)], Closed: true)
        {
            Fill = Fill.Black,
        };
        return new Symbol(id, [outline, new Lettering(middle, mix, TextStyle.Strong) { White = true }]);
    }

    /// <summary>A place where somebody stands or a microphone is.</summary>
    public static Symbol Person(string id, Spot spot, Label label) =>
        new(id, [new Circle(PlotScale.At(spot), PlotScale.Mm(PersonRadius)) { Fill = Fill.White }]) { Label = label };

    private static IEnumerable<Shape> Shapes(Placed thing) => thing.Look switch
    {
        Look.Area => [Outline(thing) with { Pen = new Pen(LineWeight.Thin, Dash.Dashed) }],
        Look.KeepClear => [Outline(thing) with { Pen = new Pen(LineWeight.Normal, Dash.Dashed), Fill = Fill.Hatch }],
        Look.Stack => [Outline(thing) with { Fill = Fill.White }, Inner(thing)],
        Look.Hang => [Outline(thing) with { Pen = Overhead }, Inner(thing) with { Pen = Overhead }],
        Look.LightStand => Tripod(PlotScale.At(thing.Spot)),
        Look.Steps => [Outline(thing) with { Fill = Fill.White }, Tread(thing)],
        _ => [Outline(thing) with { Fill = Fill.White, CornerMm = CornerMm }],
    };

    private static Rectangle Outline(Placed thing) =>
        new(PlotScale.At(thing.Spot), PlotScale.Mm(thing.Covers.Width), PlotScale.Mm(thing.Covers.Depth), thing.Turn);

    private static Rectangle Inner(Placed thing) =>
        Outline(thing) with { Width = PlotScale.Mm(thing.Covers.Width * 0.6), Height = PlotScale.Mm(thing.Covers.Depth * 0.6), Pen = Pen.Thin };

    // A tread across the middle, as wide as the steps and turned with them.
    private static Rectangle Tread(Placed thing) => Outline(thing) with { Height = PlotScale.Mm(thing.Covers.Depth / 3), Pen = Pen.Thin };

    private static IEnumerable<Shape> Tripod(Point middle)
    {
        foreach (var degrees in Legs)
        {
            var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
            yield return new Line(middle, middle.Plus(300 * cos, 300 * sin)) { Pen = Pen.Thin };
        }

        yield return new Circle(middle, 60) { Fill = Fill.Black };
    }
}
