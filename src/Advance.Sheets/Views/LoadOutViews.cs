using Advance.Domain.Facts;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the load-out sheet: the load-in backwards, with the power off first.</summary>
internal static class LoadOutViews
{
    /// <summary>Null where nothing comes in that must go out.</summary>
    public static LoadOutView? Of(Plan plan)
    {
        var tasks = plan.Crew.Tasks.Where(task => task.Undo.Length > 0).ToList();
        if (tasks.Count == 0)
        {
            return null;
        }

        var cells = new Cells(plan);
        var lines = new TaskLines(plan, cells);
        var front = LoadInViews.Front(plan, cells, finding => LoadInViews.IsLoadOut(finding) || finding.Rule.StartsWith("access/", StringComparison.Ordinal)) with
        {
            Tasks = [.. tasks.Where(task => task.IsHold).Concat(tasks.Where(task => !task.IsHold).Reverse()).Select(lines.Out)],
            Times = [.. Times(plan, cells)],
        };
        return new LoadOutView(front, cells.Of(plan.Brief.Venue.KeyForLoadOut), Cells.Head(plan.Crew.RestsOn.With(plan.Crew.LoadOut?.RestsOn ?? Doubts.None)));
    }

    private static IEnumerable<PairView> Times(Plan plan, Cells cells)
    {
        if (plan.Crew.LoadOut is { } loadOut)
        {
            yield return new PairView("Starts", Cell.Of(loadOut.Start.ToString()) with { Strong = true });
            yield return new PairView("Takes", cells.Minutes(loadOut.Length));
            yield return new PairView("Out by", Cell.Of(loadOut.End?.ToString() ?? "") with { Tbc = cells.NoteOf(loadOut.RestsOn) });
        }

        if (plan.Brief.Venue.Rules.Empty is { } empty)
        {
            yield return new PairView("Building empty", cells.Of(empty));
        }
    }
}
