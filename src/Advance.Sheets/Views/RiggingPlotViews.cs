using Advance.Domain.Facts;
using Advance.Planning;
using Advance.Sheets.Drawings;

namespace Advance.Sheets.Views;

/// <summary>Makes the rigging plot.</summary>
internal static class RiggingPlotViews
{
    /// <summary>Null where nothing that hangs can be drawn.</summary>
    public static RiggingPlotView? Of(Plan plan)
    {
        var trusses = plan.Rigging.Trusses;
        var hangs = plan.Rigging.Hangs;
        return trusses.Count + hangs.Count == 0 || RiggingPlotDrawing.Draw(plan) is null ? null : new RiggingPlotView(
            string.Join(", ", RiggingPlotDrawing.NotDrawn(plan)),
            plan.Rigging.Bridles.Any(bridle => bridle.Legs.Count > 0),
            Cells.Head(trusses.Aggregate(hangs.Aggregate(Doubts.None, (sum, hang) => sum.With(hang.RestsOn).With(hang.Stack.RestsOn)), (sum, truss) => sum.With(truss.RestsOn).With(truss.Placed.Trim.RestsOn).With(Doubts.Of(truss.Placed.Truss.Place.Doubt)).With(Doubts.Of(truss.Placed.Truss.Length.Doubt)))))
        {
            HasHangs = hangs.Count > 0,
            HasUnused = plan.Rigging.Unused.Any(point => point.Spot is not null),
        };
    }
}
