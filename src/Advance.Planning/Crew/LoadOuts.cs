using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Works out the load-out as a share of the work of the load-in, shared by all who are called.</summary>
internal static class LoadOuts
{
    private static readonly Moment Night = Moment.At(21, 0);

    /// <summary>The load-out; null where nothing is loaded in, or nobody says when the music ends or the load-out starts.</summary>
    public static LoadOut? Of(Brief brief, IReadOnlyList<TaskDraft> tasks, int people)
    {
        var parts = tasks.Where(task => task.Job is Job.Unload or Job.Deck or Job.Mains or Job.Stacks or Job.Inputs or Job.Lights or Job.Desks)
            .Select(task => task.Work).ToList();
        if (parts.Count == 0 || StartOf(brief) is not { } start)
        {
            return null;
        }

        var times = brief.Company.Policies.Tasks;
        var isNight = start.Time.Minutes >= Night.Minutes;
        var length = Sum.Of("load-out", "T = f / 100 · P / k", Publication.CommonPractice)
            .Put("f", isNight ? Figure.Policy("tasks load-out-night", times.LoadOutNight.Percent) : Figure.Policy("tasks load-out", times.LoadOut.Percent))
            .Put("P", Labour.Together(parts))
            .Put("k", new Figure<int>(people > 0 ? people : null, Workers.Doubts(brief.Gig), Reason.Derived.It))
            .Gives((percent, work, hands) => work * (percent / 100) / hands);
        return new LoadOut(start.Time, length, start.At, start.RestsOn.With(length.RestsOn));
    }

    // As written; else when the music must be off; else when the last set ends.
    private static (Moment Time, Mark At, Doubts RestsOn)? StartOf(Brief brief)
    {
        if (new DayRows(brief.Gig).LoadOut is { } row)
        {
            return (row.Time.Value, row.At, Doubts.Of(row.Time.Doubt));
        }

        if (brief.Venue.Rules.MusicOff is { IsKnown: true } off)
        {
            return (off.Value, off.At, Doubts.Of(off.Doubt));
        }

        var sets = brief.Gig.Acts.SelectMany(act => act.Sets).Where(set => set.IsKnown).ToList();
        return sets.Count == 0 ? null : sets.Select(set => (set.Value.End, set.At, Doubts.Of(set.Doubt))).MaxBy(set => set.End);
    }
}
