using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Which lines of the schedule are of the show day, and which of another day of the gig.</summary>
internal static class ScheduleDays
{
    /// <summary>Lines of the show day, in the order written; a day that the gig does not have counts as it, so that no line is lost.</summary>
    public static IEnumerable<ScheduleRow> OfShow(Gig gig) => gig.Schedule.Where(row => DayOf(row, gig) is not { Kind: not DayKind.Show });

    /// <summary>The other days with their lines, in the order written; a day without lines is left out.</summary>
    public static IEnumerable<(Day Day, IReadOnlyList<ScheduleRow> Rows)> Others(Gig gig) => gig.Days
        .Where(day => day.Kind != DayKind.Show)
        .Select(day => (day, (IReadOnlyList<ScheduleRow>)[.. gig.Schedule.Where(row => DayOf(row, gig) == day)]))
        .Where(found => found.Item2.Count > 0);

    /// <summary><c>Fri 18 Sep 2026, build</c>.</summary>
    public static string NameOf(Day day, Plan plan) =>
        day.Date.IsKnown && plan.ShowDate is { } near ? $"{Speech.Date(day.Date.Value.Resolve(near))}, {day.Name}" : DaySheetViews.Capital(day.Name);

    private static Day? DayOf(ScheduleRow row, Gig gig) => row.Day is { } name ? gig.Days.FirstOrDefault(day => day.Name == name) : null;
}
