using Advance.Planning;
using Advance.Sheets.Views;

namespace Advance.Sheets;

/// <summary>The sheets that there are, in the order of the day: a template, and the view that it prints.</summary>
internal static class SheetList
{
    /// <summary>The template of the day sheet. It lists the others, so its view is made last.</summary>
    public const string DaySheet = "day-sheet";

    /// <summary>All others; a view is null where the gig has nothing for the sheet.</summary>
    public static readonly IReadOnlyList<(string Template, Func<Plan, object?> View)> Others =
    [
        ("open-questions", OpenQuestionsViews.Of),
        ("findings", FindingsSheetViews.Of),
        ("load-in", LoadInViews.Of),
        ("load-out", LoadOutViews.Of),
        ("stage-plot", plan => plan.Stage.Stages.Count > 0 ? StagePlotViews.Of(plan) : null),
        ("act-letter", ActLetterViews.Of),
        ("rigging-plot", RiggingPlotViews.Of),
        ("hoist-table", HoistTableViews.Of),
        ("truss-pictures", TrussPicturesViews.Of),
        ("hang", HangViews.Of),
        ("point-loads", PointLoadsViews.Of),
        ("supply-request", SupplyRequestViews.Of),
        ("one-line", OneLineViews.Of),
        ("distribution", DistributionViews.Of),
        ("phase-summary", PhaseSummaryViews.Of),
        ("generator", GeneratorViews.Of),
        ("circuit-cards", CircuitCardsViews.Of),
        ("system", SystemViews.Of),
        ("stability", StabilityViews.Of),
        ("drive", DriveViews.Of),
        ("signal-diagram", SignalDiagramViews.Of),
        ("input-list", plan => plan.Brief.Gig.Acts.Count > 0 ? InputListViews.Of(plan) : null),
        ("stage-box-card", StageBoxCardViews.Of),
        ("lighting-patch", LightingPatchViews.Of),
        ("running-order", RunningOrderViews.Of),
        ("cable-sheet", CableSheetViews.Of),
        ("pull-list", PullListViews.Of),
        ("prep-sheet", PrepSheetViews.Of),
        ("hire-order", HireOrderViews.Of),
        ("loss-list", LossListViews.Of),
        ("labels", LabelsViews.Of),
        ("truck-sheet", TruckSheetViews.Of),
        ("time-line", TimeLineViews.Of),
        ("documents", DocumentsViews.Of),
        ("workings", WorkingsViews.Of),
    ];
}
