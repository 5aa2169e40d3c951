using Advance.Domain.Venues;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>What the venue and its licence ask.</summary>
internal static class HouseRulesShape
{
    public static readonly RecordShape<HouseRules> It = new("rules", "What the venue and its licence ask.", keys =>
    {
        var musicOff = keys.Open("music-off", Written.Time, "When music must be off.");
        var empty = keys.Open("empty", Written.Time, "When the building must be empty.");
        var quiet = keys.Open("quiet", Written.TimeRange, "Hours without sound.");
        var soundLimit = keys.Open("sound-limit", Written.Text, "How loud, and measured where.");
        var haze = keys.Open("haze", Written.Text, "What is allowed.");
        var wind = keys.Open("wind", Written.Text, "Limits in the open air.");
        return row => new HouseRules(musicOff(row), empty(row), quiet(row), soundLimit(row), haze(row), wind(row));
    });
}
