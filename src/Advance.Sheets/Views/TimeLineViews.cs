using Advance.Domain.Facts;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the time line.</summary>
internal static class TimeLineViews
{
    /// <summary>Null where no task has a time.</summary>
    public static TimeLineView? Of(Plan plan)
    {
        if (!plan.Crew.Tasks.Any(task => task.Start is not null))
        {
            return null;
        }

        var cells = new Cells(plan);
        var rows = Written(plan, cells).Concat(Tasks(plan)).Concat(Sets(plan)).Concat(LoadOut(plan))
            .Select((row, index) => (row.At, Index: index, row.Row))
            .OrderBy(row => row.At)
            .ThenBy(row => row.Index)
            .Select(row => row.Row);
        return new TimeLineView(
            [.. rows],
            Cells.Head(plan.Crew.RestsOn.With(plan.Crew.LoadOut?.RestsOn ?? Doubts.None)));
    }

    private static IEnumerable<(Moment At, TimeLineView.Row Row)> Written(Plan plan, Cells cells) =>
        ScheduleDays.OfShow(plan.Brief.Gig).Where(row => row.Time.IsKnown).Select(row => (
            row.Time.Value,
            new TimeLineView.Row(cells.Of(row.Time) with { Strong = true }, Cell.Blank, Cell.Of(row.What) with { Strong = true }, cells.Of(row.Who), Cell.Of(row.Where), Cell.Of("written"), row.IsHold)));

    // A hold stands there as it was written.
    private static IEnumerable<(Moment At, TimeLineView.Row Row)> Tasks(Plan plan) =>
        plan.Crew.Tasks.Where(task => task is { Start: not null, IsHold: false }).Select(task => (
            task.Start!.Value,
            new TimeLineView.Row(Cell.Of(task.Start.Value.ToString()), Cell.Of(task.End?.ToString() ?? ""), Cell.Of(task.What), Cell.Of(task.Who.Count > 1 && task.Who.Count == plan.Crew.Workers.Count ? "all" : string.Join(", ", task.Who)), Cell.Of(task.Area), Cell.Of("task"), IsHold: false)));

    private static IEnumerable<(Moment At, TimeLineView.Row Row)> Sets(Plan plan) =>
        plan.Brief.Gig.Acts.SelectMany(act => act.Sets.Where(set => set.IsKnown).Select(set => (
            set.Value.Start,
            new TimeLineView.Row(Cell.Of(set.Value.Start.ToString()) with { Strong = true }, Cell.Of(set.Value.End.ToString()), Cell.Of($"{act.Name} play") with { Strong = true }, Cell.Of(act.Name), Cell.Of("stage"), Cell.Of("set"), IsHold: false))));

    private static IEnumerable<(Moment At, TimeLineView.Row Row)> LoadOut(Plan plan) => plan.Crew.LoadOut is { } loadOut
        ? [(loadOut.Start, new TimeLineView.Row(Cell.Of(loadOut.Start.ToString()), Cell.Of(loadOut.End?.ToString() ?? ""), Cell.Of("Load out"), Cell.Of("all"), Cell.Blank, Cell.Of("task"), IsHold: false))]
        : [];
}
