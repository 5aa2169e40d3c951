using Advance.Domain.Facts;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>The lines of the show day, and what can be told from their words: a check, doors, the end of the music.</summary>
/// <param name="gig">As written.</param>
internal sealed class DayRows(Gig gig)
{
    private static readonly string[] LineCheckWords = ["line check", "line-check"];
    private static readonly string[] SoundCheckWords = ["sound check", "sound-check", "soundcheck"];
    private static readonly string[] LoadOutWords = ["load-out", "load out", "get-out", "get out", "strike"];
    private static readonly string[] MealWords = ["crew meal", "meal", "crew break", "break"];
    private static readonly string[] MusicOffWords = ["music off", "music-off"];
    private static readonly string[] OverWords = [" over", " ends", " done", " finished"];

    /// <summary>Every line of the day, in the order written.</summary>
    public IReadOnlyList<ScheduleRow> All { get; } = [.. gig.Schedule.Where(row => row.Day is null || IsShow(gig, row.Day))];

    /// <summary>Lines with a time, in the order of their times.</summary>
    public IReadOnlyList<ScheduleRow> Timed => [.. All.Where(row => row.Time.IsKnown).OrderBy(row => row.Time.Value)];

    /// <summary>The first check of the lines; null where none is planned.</summary>
    public ScheduleRow? LineCheck => First(LineCheckWords);

    /// <summary>Starts of sound checks.</summary>
    public IEnumerable<ScheduleRow> SoundChecks => Timed.Where(row => Starts(row, SoundCheckWords) && !IsOver(row));

    /// <summary>The end of the sound check that starts there; null where no line says it.</summary>
    public Moment? EndOf(ScheduleRow soundCheck) => Timed.FirstOrDefault(row =>
        row.Time.Value.Minutes > soundCheck.Time.Value.Minutes && Starts(row, SoundCheckWords))?.Time.Value;

    /// <summary>When the load-out starts; null where no line says it.</summary>
    public ScheduleRow? LoadOut => First(LoadOutWords);

    /// <summary>Meals and breaks of the crew.</summary>
    public IEnumerable<ScheduleRow> Meals => Timed.Where(row => Starts(row, MealWords));

    /// <summary>When the music ends.</summary>
    public IEnumerable<ScheduleRow> MusicOff => Timed.Where(row => Starts(row, MusicOffWords));

    /// <summary>Holds, in the order written.</summary>
    public IEnumerable<ScheduleRow> Holds => All.Where(row => row.IsHold);

    /// <summary>The first line of the day that needs a load-in that is done: a check, doors or a set; null where there is none.</summary>
    public (string What, Moment Time, Mark At, Doubts RestsOn)? Deadline
    {
        get
        {
            var rows = Timed.Where(row => Starts(row, LineCheckWords) || Starts(row, SoundCheckWords) || Starts(row, ["doors"]))
                .Select(row => (row.What, Time: row.Time.Value, row.At, RestsOn: Doubts.Of(row.Time.Doubt)));
            var sets = gig.Acts.SelectMany(act => act.Sets.Where(set => set.IsKnown)
                .Select(set => (What: $"{act.Name} play", Time: set.Value.Start, set.At, RestsOn: Doubts.Of(set.Doubt))));
            var all = rows.Concat(sets).ToList();
            return all.Count == 0 ? null : all.MinBy(found => found.Time);
        }
    }

    private static bool IsShow(Gig gig, string day) =>
        gig.Days.FirstOrDefault(known => known.Name == day)?.Kind == DayKind.Show;

    private static bool Starts(ScheduleRow row, IEnumerable<string> words) =>
        words.Any(word => row.What.StartsWith(word, StringComparison.OrdinalIgnoreCase));

    private static bool IsOver(ScheduleRow row) => OverWords.Any(word => row.What.EndsWith(word, StringComparison.OrdinalIgnoreCase));

    private ScheduleRow? First(IEnumerable<string> words) => Timed.FirstOrDefault(row => Starts(row, words));
}
