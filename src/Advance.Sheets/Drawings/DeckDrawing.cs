using System.Globalization;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
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

    // In metres: of the name of a stage under its upstage edge.
    private const double NameBelow = 0.4;

    private const double Tiny = 1e-6;
    private const double FootInMetres = 0.3048;
    private const int UsGrid = 4;

    private static readonly int[] Sides = [-1, 1];

    /// <summary>From back to front; nothing where the size is unknown.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="things">What stands on and around it: the letters of the sides keep off it.</param>
    /// <param name="units">Those of the paper: a line of the grid each metre, or each four feet.</param>
    public static IEnumerable<Layer> Layers(Stage stage, IReadOnlyList<Placed> things, UnitSystem units)
    {
        if (!stage.Size.Is(out var size))
        {
            yield break;
        }

        var (half, depth) = (size.Width.Meters / 2, size.Depth.Meters);
        var (grid, counts) = units == UnitSystem.Metric ? (1.0, 1) : (UsGrid * FootInMetres, UsGrid);
        yield return new Layer("grid", [.. Grid(half, depth, grid)]);
        yield return new Layer("deck", [Edge(half, depth)]) { KeepsLabelsOff = true };
        yield return new Layer("lettering", [.. Words(half, depth, things, grid, counts)]);
    }

    /// <summary>Another stage's deck where it stands, by its name: nothing is measured from it.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="spot">The middle of its downstage edge.</param>
    public static IEnumerable<Layer> Further(Stage stage, Spot spot)
    {
        if (stage.Size.Is(out var size))
        {
            yield return new Layer("deck", [new Rectangle(PlotScale.At(spot.Plus(0, size.Depth.Meters / 2)), PlotScale.Mm(size.Width.Meters), PlotScale.Mm(size.Depth.Meters)) { Pen = Pen.Heavy }]) { KeepsLabelsOff = true };
            yield return new Layer("lettering", [new Lettering(PlotScale.At(spot.Plus(0, size.Depth.Meters - NameBelow)), stage.Name, TextStyle.Strong)]);
        }
    }

    private static IEnumerable<Shape> Grid(double half, double depth, double grid)
    {
        for (var x = grid; x < half - Tiny; x += grid)
        {
            foreach (var side in Sides)
            {
                yield return new Line(PlotScale.At(x * side, 0), PlotScale.At(x * side, depth)) { Pen = Pen.Hair };
            }
        }

        for (var y = grid; y < depth - Tiny; y += grid)
        {
            yield return new Line(PlotScale.At(-half, y), PlotScale.At(half, y)) { Pen = Pen.Hair };
        }

        yield return new Line(PlotScale.At(0, depth), PlotScale.At(0, -0.5)) { Pen = new Pen(LineWeight.Thin, Dash.Centre) };
    }

    private static Rectangle Edge(double half, double depth) =>
        new(PlotScale.At(0, depth / 2), PlotScale.Mm(2 * half), PlotScale.Mm(depth)) { Pen = Pen.Heavy };

    private static IEnumerable<Shape> Words(double half, double depth, IReadOnlyList<Placed> things, double grid, int counts)
    {
        for (var x = 1; x * grid <= half + Tiny; x++)
        {
            yield return Number(x * counts, PlotScale.At(-x * grid, -Beside));
            yield return Number(x * counts, PlotScale.At(x * grid, -Beside));
        }

        for (var y = 1; y * grid <= depth + Tiny; y++)
        {
            yield return Number(y * counts, PlotScale.At(-half - Beside, y * grid));
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
