using System.Globalization;
using Advance.Domain.Gigs;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;

namespace Advance.Sheets.Drawings;

/// <summary>The deck itself: its edges, a grid of metres with their numbers, the centre line, the two sides and the audience.</summary>
internal static class DeckDrawing
{
    private const double SideLetterMm = 5;
    private const double Beside = 0.25;
    private const double SideLetters = 1.5;

    private static readonly int[] Sides = [-1, 1];

    /// <summary>From back to front; nothing where the size is unknown.</summary>
    public static IEnumerable<Layer> Layers(Stage stage)
    {
        if (!stage.Size.Is(out var size))
        {
            yield break;
        }

        var (half, depth) = (size.Width.Meters / 2, size.Depth.Meters);
        yield return new Layer("grid", [.. Grid(half, depth)]);
        yield return new Layer("deck", [Edge(half, depth)]) { KeepsLabelsOff = true };
        yield return new Layer("lettering", [.. Words(half, depth)]);
    }

    private static IEnumerable<Shape> Grid(double half, double depth)
    {
        for (var x = 1; x < half; x++)
        {
            foreach (var side in Sides)
            {
                yield return new Line(PlotScale.At(x * side, 0), PlotScale.At(x * side, depth)) { Pen = Pen.Hair };
            }
        }

        for (var y = 1; y < depth; y++)
        {
            yield return new Line(PlotScale.At(-half, y), PlotScale.At(half, y)) { Pen = Pen.Hair };
        }

        yield return new Line(PlotScale.At(0, depth), PlotScale.At(0, -0.5)) { Pen = new Pen(LineWeight.Thin, Dash.Centre) };
    }

    private static Rectangle Edge(double half, double depth) =>
        new(PlotScale.At(0, depth / 2), PlotScale.Mm(2 * half), PlotScale.Mm(depth)) { Pen = Pen.Heavy };

    private static IEnumerable<Shape> Words(double half, double depth)
    {
        for (var x = 1; x <= half; x++)
        {
            yield return Number(x, PlotScale.At(-x, -Beside));
            yield return Number(x, PlotScale.At(x, -Beside));
        }

        for (var y = 1; y <= depth; y++)
        {
            yield return Number(y, PlotScale.At(-half - Beside, y));
        }

        yield return Letters("SR", PlotScale.At(-half - SideLetters, depth / 2));
        yield return Letters("SL", PlotScale.At(half + SideLetters, depth / 2));
        yield return new Lettering(PlotScale.At(0, -0.8), "audience", TextStyle.Normal) { Spread = 0.4 };
    }

    private static Lettering Number(int metres, Point at) => new(at, metres.ToString(CultureInfo.InvariantCulture));

    private static Lettering Letters(string side, Point at) => new(at, side, TextStyle.Strong) { HeightMm = SideLetterMm };
}
