using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>A truss to scale, seen from its side: what holds it, what it carries, and below the floor how it shears and bends.</summary>
internal static class TrussElevationDrawing
{
    // In metres: how high a truss is drawn, and how far lines go beyond its ends.
    private const double Depth = 0.3;
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
        var trim = truss.Placed.Trim.Value?.Meters ?? UsualTrim;
        var hung = new HungSide(plan, truss, speech, trim + Depth, trim + Depth + UsualAbove);
        return new Scene(
            $"{truss.Name} seen from {(truss.Placed.Truss.RunsUpstage ? "stage left" : "the audience")}, with shear and moment along it",
            [
                new Layer("floor", [.. Floor(length)]),
                new Layer("truss", [Chord(truss, length, trim)]),
                new Layer("picks", [.. hung.Shapes()]),
                new Layer("loads", [.. CarriedSide.Shapes(truss, trim, speech)]),
                new Layer("dimensions", [.. Dimensions(truss, hung, length, trim, speech)]),
                new Layer("forces", [.. ForceCurves.Shapes(truss, plan.Brief.Company.Policies.Rigging.DynamicFactor, length)]) { KeepsLabelsOff = true },
            ]);
    }

    /// <summary>From metres along the truss and above the floor to the scene.</summary>
    public static Paper.Pictures.Point At(double along, double above) => PlotScale.At(along, above);

    private static IEnumerable<Shape> Floor(double length)
    {
        yield return new Line(At(-Beyond, 0), At(length + Beyond, 0)) { Pen = Pen.Heavy };
        yield return new Lettering(At(-Beyond, 0.2), "floor", TextStyle.Quiet) { Anchor = Anchor.Left };
    }

    private static Symbol Chord(TrussPlan truss, double length, double trim)
    {
        List<Shape> shapes = [new Rectangle(At(length / 2, trim + (Depth / 2)), PlotScale.Mm(length), PlotScale.Mm(Depth)) { Fill = Fill.White }];
        var bays = Math.Max(1, (int)Math.Round(length / Depth / 1.5));
        for (var bay = 0; bay < bays; bay++)
        {
            var (left, right) = (length * bay / bays, length * (bay + 1) / bays);
            shapes.Add(new Line(At(left, bay % 2 == 0 ? trim : trim + Depth), At(right, bay % 2 == 0 ? trim + Depth : trim)) { Pen = Pen.Hair });
        }

        return new Symbol(truss.Address.Text, shapes);
    }

    private static IEnumerable<Shape> Dimensions(TrussPlan truss, HungSide hung, double length, double trim, Speech speech)
    {
        yield return new Dimension(At(0, 0), At(0, trim), LoadWords.Of("trim", truss.Placed.Trim, speech));
        if (hung.Steel is { } steel)
        {
            yield return new Dimension(At(length, steel), At(length, 0), $"steel {speech.Say(UnitsNet.Length.FromMeters(steel))}");
        }
    }
}
