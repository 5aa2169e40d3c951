using Advance.Domain.Naming;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the labels.</summary>
internal static class LabelsViews
{
    private const int AcrossThePage = 4;

    /// <summary>Null where there is nothing to label.</summary>
    public static LabelsView? Of(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        var cells = new Cells(plan);
        var cables = plan.Cables.Runs.Where(run => run.Leads.Count > 0)
            .OrderBy(run => run.Label, Comparer<string>.Create(Natural.Compare))
            .Select(run => CableOf(run, cells))
            .Chunk(AcrossThePage)
            .Select(row => new LabelsView.CableRow([.. row, .. Enumerable.Repeat(Nothing, AcrossThePage - row.Length)]));
        var cases = plan.Load.InOrder.Select((row, index) => (row, Place: index + 1)).Where(found => found.row.Unit.IsCase)
            .Select(found => CaseOf(found.row, found.Place, cells));
        var gig = plan.Brief.Gig.Title + (plan.ShowDate is { } date ? $" · {Speech.Date(date)}" : "");
        var view = new LabelsView([.. cables], [.. cases], gig, Cells.Head(plan.Cables.RestsOn), Cells.Head(plan.Load.Gross.RestsOn.With(plan.Crew.RestsOn)));
        return view.Cables.Count + view.Cases.Count > 0 ? view : null;
    }

    private static LabelsView.CableLabel Nothing => new(Cell.Blank, Cell.Blank, Cell.Blank, Cell.Blank);

    private static LabelsView.CableLabel CableOf(Run run, Cells cells) => new(
        Cell.Of(run.Label) with { Strong = true },
        Cell.Of(RunLines.EndOf(run.Link.From)),
        Cell.Of(RunLines.EndOf(run.Link.To)),
        cells.WithUnit(run.MadeUp) with { Tbc = null });

    // Where it is wanted first; what no task asks for goes where the crew chief says.
    private static LabelsView.CaseLabel CaseOf(LoadRow row, int place, Cells cells) => new(
        (row.Task?.Job switch
        {
            null => "spare",
            Job.Desks => row.Task.Area,
            Job.Lights => "lights",
            Job.Mains => "power",
            Job.Stacks => "PA",
            Job.Inputs => "patch",
            Job.Unload => "truck",
            _ => row.Task.Area,
        }).ToUpperInvariant(),
        Cell.Of(CaseWords.Of(row.Unit)) with { Strong = true },
        Cell.Of(CaseWords.Contents(row.Unit)),
        cells.WithUnit(row.Unit.Gross) with { Tbc = null },
        Cell.Number(place));
}
