using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>When it is rigged and when it comes out again: as written with the rigging, else what the schedule says of roof, truss and hoists.</summary>
internal static class RigHours
{
    private static readonly string[] In = ["rig", "roof", "truss", "hoist", "motor", "fly", "load-in", "lights up"];
    private static readonly string[] Out = ["de-rig", "rig out", "load-out", "roof down", "truss down"];

    /// <summary>In and out.</summary>
    public static IEnumerable<PairView> Of(Plan plan, Cells cells)
    {
        var rigging = plan.Brief.Gig.Rigging;
        yield return new PairView("Rig in", Written(rigging.RigIn, cells) ?? Found(plan, cells, In));
        yield return new PairView("Rig out", Written(rigging.RigOut, cells) ?? Found(plan, cells, Out));
    }

    private static Cell? Written(Given<string>? given, Cells cells) => given is { } said ? cells.Of(said) : null;

    private static Cell Found(Plan plan, Cells cells, string[] words)
    {
        var rows = plan.Brief.Gig.Schedule.Where(row => row.Time.IsKnown && words.Any(word => Has(row.What, word))).Take(3).ToList();
        var doubts = rows.Aggregate(Doubts.None, (sum, row) => sum.With(Doubts.Of(row.Time.Doubt)));
        return rows.Count > 0 ? Cell.Of(string.Join("; ", rows.Select(row => $"{DayOf(row, plan)}{row.Time.Value} {row.What}"))) with { Tbc = cells.NoteOf(doubts) } : new Cell("not told yet") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
    }

    // At the start of a word: "rig" in "rigging", not in "bright".
    private static bool Has(string what, string word)
    {
        var at = what.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        return at == 0 || (at > 0 && !char.IsLetter(what[at - 1]));
    }

    private static string DayOf(ScheduleRow row, Plan plan) =>
        row.Day is { } name && plan.Brief.Gig.Days.FirstOrDefault(day => day.Name == name) is { } day ? $"{ScheduleDays.NameOf(day, plan)}, " : "";
}
