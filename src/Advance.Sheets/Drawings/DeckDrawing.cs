using System.Globalization;
using Advance.Domain.Gigs;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>The deck itself: its edges, a grid of metres with their numbers, the centre line, the two sides and the audience.</summary>
internal static class DeckDrawing
{
    private const double SideLetterMm = 5;
    private const double Beside = 0.25;
    private const double SideLetters = 1.5;

    // In metres: from one place for the letters to the next, and what they keep free around their middle.
    private const double Step = 0.5;
    private const double SideRoom = 0.6;

    private static readonly int[] Sides = [-1, 1];

    /// <summary>From back to front; nothing where the size is unknown.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="things">What stands on and around it: the letters of the sides keep off it.</param>
    public static IEnumerable<Layer> Layers(Stage stage, IReadOnlyList<Placed> things)
    {
        if (!stage.Size.Is(out var size))
        {
            yield break;
        }

        var (half, depth) = (size.Width.Meters / 2, size.Depth.Meters);
        yield return new Layer("grid", [.. Grid(half, depth)]);
        yield return new Layer("deck", [Edge(half, depth)]) { KeepsLabelsOff = true };
        yield return new Layer("lettering", [.. Words(half, depth, things)]);
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

    private static IEnumerable<Shape> Words(double half, double depth, IReadOnlyList<Placed> things)
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

        yield return Letters("SR", Free(-half - SideLetters, depth, things));
        yield return Letters("SL", Free(half + SideLetters, depth, things));
        yield return new Lettering(PlotScale.At(0, -0.8), "audience", TextStyle.Normal) { Spread = 0.4 };
    }

    // Half way up where nothing stands there; else as near to it as may be.
    private static Point Free(double x, double depth, IReadOnlyList<Placed> things)
    {
        var middle = depth / 2;
        var free = Enumerable.Range(0, (int)(depth / Step))
            .Select(index => middle + (Step * ((index + 1) / 2) * (index % 2 == 0 ? 1 : -1)))
            .Where(y => !things.Any(thing => Math.Abs(thing.Spot.X - x) < (thing.Covers.Width / 2) + SideRoom && Math.Abs(thing.Spot.Y - y) < (thing.Covers.Depth / 2) + SideRoom))
            .Append(middle);
        return PlotScale.At(x, free.First());
    }

    private static Lettering Number(int metres, Point at) => new(at, metres.ToString(CultureInfo.InvariantCulture));

    private static Lettering Letters(string side, Point at) => new(at, side, TextStyle.Strong) { HeightMm = SideLetterMm };
}
