using Advance.Domain.Facts;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the running-order card.</summary>
internal static class RunningOrderViews
{
    /// <summary>Null where nobody plays at a known time.</summary>
    public static RunningOrderView? Of(Plan plan)
    {
        var gig = plan.Brief.Gig;
        var sets = gig.Acts
            .SelectMany(act => act.Sets.Where(set => set.IsKnown).Select(set => (set.Value.Start, Time: $"{set.Value.Start}–{set.Value.End}", act.Name, IsSet: true)))
            .ToList();
        if (sets.Count == 0)
        {
            return null;
        }

        var first = First(plan, sets.Min(set => set.Start));
        var rest = ScheduleDays.OfShow(gig)
            .Where(row => row.Time.IsKnown && row.Time.Value.CompareTo(first) >= 0)
            .Select(row => (row.Time.Value, row.Time.Value.ToString(), row.What, false));
        return new RunningOrderView([.. sets.Concat(rest).OrderBy(line => line.Item1).Select(line => new RunningOrderView.Line(line.Item2, line.Item3, line.Item4))]);
    }

    // The card begins with the last thing that happens before the first set and has to do with the public: an hour before is enough to be warned.
    private static Moment First(Plan plan, Moment set)
    {
        var doors = ScheduleDays.OfShow(plan.Brief.Gig).Where(row => row.Time.IsKnown && row.What.StartsWith("Doors", StringComparison.OrdinalIgnoreCase)).Select(row => row.Time.Value).ToList();
        return doors.Count > 0 ? doors.Min() : set.Plus(-60);
    }
}
