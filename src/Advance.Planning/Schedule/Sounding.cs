using Advance.Domain.Facts;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>When something is loud: a sound check, or a set.</summary>
/// <param name="What">In words.</param>
/// <param name="Time">From when to when.</param>
/// <param name="At">Where it was written.</param>
/// <param name="RestsOn">The open questions about it.</param>
internal sealed record Sounding(string What, MomentRange Time, Mark At, Doubts RestsOn)
{
    /// <summary>Everything loud of the show day.</summary>
    /// <param name="gig">As written.</param>
    /// <param name="soundCheck">How many minutes a sound check takes where no line says when it is over.</param>
    public static IReadOnlyList<Sounding> Of(Gig gig, int soundCheck)
    {
        var day = new DayRows(gig);
        var checks = day.SoundChecks.Select(row => new Sounding(
            row.What, new MomentRange(row.Time.Value, day.EndOf(row) ?? row.Time.Value.Plus(soundCheck)), row.At, Doubts.Of(row.Time.Doubt)));
        return [.. checks, .. Sets(gig)];
    }

    /// <summary>Every set whose time is known.</summary>
    public static IEnumerable<Sounding> Sets(Gig gig) => gig.Acts.SelectMany(act => act.Sets.Where(set => set.IsKnown)
        .Select(set => new Sounding($"{act.Name} play", new MomentRange(set.Value.Start, set.Value.End), set.At, Doubts.Of(set.Doubt))));
}
