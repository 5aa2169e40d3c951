using Advance.Domain.Stocks;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>What only a loudspeaker has.</summary>
internal static class LoudspeakerShape
{
    public static readonly RecordShape<Loudspeaker> It = new("loudspeaker", "What only a loudspeaker or its processor has.", keys =>
    {
        var top = keys.Defaulted("top", Written.Name, "", "Mating face on top.", "none: nothing may stand there");
        var below = keys.Defaulted("below", Written.Name, "", "Mating face below.", "none");
        var rear = keys.Defaulted("rear", Written.Name, "", "Mating face at the rear.", "none");
        var mayPair = keys.Defaulted("may-pair", Written.Name, "", "Id of the box that it may be turned against.", "none");
        var pairedEnds = keys.Defaulted("paired-ends", Written.OneOf("paired-ends", "which ends of two boxes meet", ("high", "high"), ("low", "low")), "", "Which ends then meet.", "not said");
        var mayFly = keys.Defaulted("may-fly", Written.YesNo, false, "Whether it may hang.", "no");
        var aimRange = keys.Open("aim-range", Written.Angle, "Electronic aim, either way.");
        var delayRange = keys.Open("delay-range", Written.Duration, "Longest delay that it can set.");
        var software = keys.Defaulted("software", Written.Text, "", "Version expected.", "none");
        var impedance = keys.Open("impedance", Written.Resistance, "Nominal, of a passive box.");
        return row => new Loudspeaker(
            top(row), below(row), rear(row), mayPair(row), pairedEnds(row), mayFly(row), aimRange(row), delayRange(row), software(row), impedance(row));
    });
}
