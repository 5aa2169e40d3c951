using Advance.Planning;
using Advance.Sheets.Drawings;

namespace Advance.Sheets.Views;

/// <summary>Makes the signal diagram.</summary>
internal static class SignalDiagramViews
{
    // What stands between the margins of a sheet on its side.
    private const double A4Mm = 268;

    /// <summary>Null where nothing is connected.</summary>
    public static SignalDiagramView? Of(Plan plan)
    {
        var drawing = SignalDrawing.Of(plan);
        if (drawing.IsEmpty)
        {
            return null;
        }

        var doubts = plan.Patch.Lines.Aggregate(plan.Patch.RestsOn.With(plan.Cables.RestsOn), (sum, line) => sum.With(line.RestsOn));
        if (drawing.WidthMm <= A4Mm)
        {
            return new SignalDiagramView("a4", [new SignalDiagramView.Part("whole", "")], Cells.Head(doubts));
        }

        var (before, after) = (SignalDrawing.Of(plan, toDesk: true), SignalDrawing.Of(plan, toDesk: false));
        var parts = new List<SignalDiagramView.Part>();
        if (!before.IsEmpty)
        {
            parts.Add(new SignalDiagramView.Part("to-desk", "To the desk"));
        }

        if (!after.IsEmpty)
        {
            parts.Add(new SignalDiagramView.Part("from-desk", "From the desk"));
        }

        return new SignalDiagramView(Math.Max(before.WidthMm, after.WidthMm) <= A4Mm ? "a4" : "a3", parts, Cells.Head(doubts));
    }
}
