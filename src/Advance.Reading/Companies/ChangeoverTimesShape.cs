using Advance.Domain.Companies;
using Advance.Reading.Shapes;

namespace Advance.Reading.Companies;

/// <summary>How long it takes a company to get from one act to the next.</summary>
internal static class ChangeoverTimesShape
{
    public static readonly RecordShape<ChangeoverTimes> It = new("changeover", "How long it takes from one act to the next.", keys =>
    {
        var usual = ChangeoverTimes.Default;
        var strike = keys.Defaulted("strike-and-set", Written.Duration, usual.StrikeAndSet, "One act off, the next on.", "20 min");
        var rePatch = keys.Defaulted("re-patch", Written.Duration, usual.RePatch, "Of one line.", "1 min");
        var hands = keys.Defaulted("patch-hands", Written.Between("patch-hands", 1, 20), usual.PatchHands, "How many patch.", "2");
        var check = keys.Defaulted("check", Written.Duration, usual.Check, "Of one line or mix of the next act.", "20 s");
        var handOver = keys.Defaulted("hand-over", Written.Duration, usual.HandOver, "Until the stage is the next act's.", "3 min");
        var least = keys.Defaulted("at-least", Written.Duration, usual.AtLeast, "Where all of it comes in one vehicle.", "15 min");
        var festival = keys.Defaulted("at-least-festival", Written.Duration, usual.AtLeastFestival, "Where it takes more vehicles.", "20 min");
        var use = keys.Defaulted("use", Written.Percentage, usual.Use, "How much of the gap it may fill.", "90 %");
        return row => new ChangeoverTimes
        {
            StrikeAndSet = strike(row),
            RePatch = rePatch(row),
            PatchHands = hands(row),
            Check = check(row),
            HandOver = handOver(row),
            AtLeast = least(row),
            AtLeastFestival = festival(row),
            Use = use(row),
        };
    });
}
