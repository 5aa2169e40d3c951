using Advance.Planning;
using Advance.Sheets.Drawings;

namespace Advance.Sheets.Views;

/// <summary>Makes the signal diagram.</summary>
internal static class SignalDiagramViews
{
    // What stands between the margins of a sheet on its side.
    private const double A4Mm = 268;

    // What stands between head and foot, under the words over the drawing.
    private const double A4HighMm = 130;
    private const double A3HighMm = 215;

    /// <summary>Null where nothing is connected.</summary>
    public static SignalDiagramView? Of(Plan plan)
    {
        var drawing = SignalDrawing.Of(plan, SignalPart.Whole);
        if (drawing.IsEmpty)
        {
            return null;
        }

        var doubts = plan.Patch.Lines.Aggregate(plan.Patch.RestsOn.With(plan.Cables.RestsOn), (sum, line) => sum.With(line.RestsOn));
        if (drawing.WidthMm <= A4Mm)
        {
            return new SignalDiagramView("a4", [new SignalDiagramView.Part("whole", "")], Cells.Head(doubts));
        }

        var before = SignalDrawing.Of(plan, SignalPart.ToDesk);
        var after = SignalDrawing.Of(plan, SignalPart.FromDesk);
        var parts = new List<SignalDiagramView.Part>();
        if (!before.IsEmpty)
        {
            parts.Add(new SignalDiagramView.Part("to-desk", "To the desk"));
        }

        if (!after.IsEmpty)
        {
            parts.AddRange(AfterTheDesk(plan, after));
        }

        return new SignalDiagramView(Math.Max(before.WidthMm, after.WidthMm) <= A4Mm ? "a4" : "a3", parts, Cells.Head(doubts));
    }

    // What is higher than the page would be drawn smaller than its letters allow.
    private static IEnumerable<SignalDiagramView.Part> AfterTheDesk(Plan plan, SignalDrawing after)
    {
        var isParted = after.HeightMm > (after.WidthMm <= A4Mm ? A4HighMm : A3HighMm)
            && !SignalDrawing.Of(plan, SignalPart.Loudspeakers).IsEmpty && !SignalDrawing.Of(plan, SignalPart.Heard).IsEmpty;
        return isParted
            ? [new("loudspeakers", "From the desk to the loudspeakers"), new("heard", "From the desk to those on stage")]
            : [new("from-desk", "From the desk")];
    }
}
