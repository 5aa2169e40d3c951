using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>A truss to scale, seen from its side: what holds it, what it carries, and below the floor how it shears and bends.</summary>
internal static class TrussElevationDrawing
{
    // In metres: how far the floor goes beyond its ends.
    private const double Beyond = 0.6;

    // Where nobody knows how high it hangs, or how high the steel is.
    private const double UsualTrim = 3;
    private const double UsualAbove = 1.5;

    /// <summary>Draws it; null where nobody knows how long it is.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="truss">Which truss.</param>
    public static Scene? Draw(Plan plan, TrussPlan truss)
    {
        if (!truss.Placed.Truss.Length.Is(out var given))
        {
            return null;
        }

        var (speech, length) = (Speech.Of(plan.Brief.Company.Units), given.Meters);
        var heights = HeightsOf(plan, truss);
        var hung = new HungSide(plan, truss, speech, heights);
        return new Scene(
            $"{truss.Name} seen from {(truss.Placed.Truss.RunsUpstage ? "stage left" : "the audience")}, with shear and moment along it",
            [
                new Layer("floor", [.. Floor(length, heights.Stretch)]) { KeepsLabelsOff = true },
                new Layer("truss", [Chord(truss, length, heights)]) { KeepsLabelsOff = true },
                new Layer("chains", [.. hung.Chains()]) { KeepsLabelsOff = true },
                new Layer("picks", [.. hung.Symbols()]),
                new Layer("loads", [.. CarriedSide.Shapes(truss, heights, speech)]),
                new Layer("dimensions", [.. Dimensions(plan, truss, length, heights, speech)]),
                new Layer("forces", [.. ForceCurves.Shapes(truss, plan.Brief.Company.Policies.Rigging.DynamicFactor, length, heights.Stretch, speech.Paper)]) { KeepsLabelsOff = true },
            ]);
    }

    /// <summary>How heights are drawn for a truss.</summary>
    public static TrussHeights HeightsOf(Plan plan, TrussPlan truss)
    {
        var trim = truss.Placed.Trim.Value?.Meters ?? UsualTrim;
        var stretch = truss.Placed.Truss.Length.Is(out var length) ? TrussHeights.StretchOf(length.Meters) : 1;
        return new TrussHeights(trim, HungSide.SteelOf(plan, truss) ?? TrussHeights.SteelOver(trim, UsualAbove), stretch, CarriedSide.MoreRoom(truss));
    }

    /// <summary>From metres along the truss and above the floor to the scene.</summary>
    public static Paper.Pictures.Point At(double along, double above) => PlotScale.At(along, above);

    private static IEnumerable<Shape> Floor(double length, double stretch)
    {
        yield return new Line(At(-Beyond, 0), At(length + Beyond, 0)) { Pen = Pen.Heavy };
        yield return new Lettering(At(-0.1, -0.2 * stretch), "floor", TextStyle.Quiet) { Anchor = Anchor.Right };
    }

    private static Symbol Chord(TrussPlan truss, double length, TrussHeights heights)
    {
        const double Bay = 0.45;
        var (lower, upper) = (heights.Lower, heights.Upper);
        List<Shape> shapes = [new Rectangle(At(length / 2, (lower + upper) / 2), PlotScale.Mm(length), PlotScale.Mm(upper - lower)) { Fill = Fill.White }];
        var bays = Math.Max(1, (int)Math.Round(length / Bay, MidpointRounding.AwayFromZero));
        for (var bay = 0; bay < bays; bay++)
        {
            var (left, right) = (length * bay / bays, length * (bay + 1) / bays);
            shapes.Add(new Line(At(left, bay % 2 == 0 ? lower : upper), At(right, bay % 2 == 0 ? upper : lower)) { Pen = Pen.Hair });
        }

        return new Symbol(truss.Address.Text, shapes);
    }

    private static IEnumerable<Shape> Dimensions(Plan plan, TrussPlan truss, double length, TrussHeights heights, Speech speech)
    {
        yield return new Dimension(At(0, 0), At(0, heights.Lower), LoadWords.Of("trim", truss.Placed.Trim, speech));
        if (HungSide.SteelOf(plan, truss) is { } steel)
        {
            yield return new Dimension(At(length, heights.Of(steel)), At(length, 0), $"steel {speech.Say(UnitsNet.Length.FromMeters(steel))}");
        }
    }
}
