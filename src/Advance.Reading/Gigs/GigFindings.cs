using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Reading.Gigs;

/// <summary>What can be wrong between the keys of a gig, in words.</summary>
internal static class GigFindings
{
    public static Finding NoDay(Mark at) =>
        Fault("missing-key", at, "A gig has a day, and none is written", "Write day: Sat 12 Sep 2026, or days: with a name and a date for each.");

    public static Finding DayAndDays(Mark at) =>
        Fault("two-ways", at, "Both day and days are written", "Write day for a single day, or days for several.");

    public static Finding StageAndStages(Mark at) =>
        Fault("two-ways", at, "Both stage and stages are written", "Write stage for a single one, or stages with a name for each.");

    public static Finding WayTooShort(Mark at, string name) =>
        Fault("too-few", at, $"{name} needs at least two places: from where, and to where", "Write along: [SB1, FOH] with the corners between them.");

    private static Finding Fault(string rule, Mark at, Words says, Words cure) => new($"reading/{rule}", Severity.Error, at, says, cure);
}
