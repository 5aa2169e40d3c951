using Advance.Domain.Stocks;
using Advance.Reading.Shapes;

namespace Advance.Reading.Stocks;

/// <summary>What only a loudspeaker has.</summary>
internal static class LoudspeakerShape
{
    private static readonly Shape<Filter> Filters = Written.OneOf("filter", "a filter", ("high-pass", Filter.HighPass), ("low-pass", Filter.LowPass));

    public static readonly RecordShape<Loudspeaker> It = new("loudspeaker", "What only a loudspeaker, its processor or its amplifier has.", keys =>
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
        var sub = keys.Defaulted("sub", Written.YesNo, false, "Whether it plays only the lows.", "no, but where its link hands on high-passed");
        var mayFaceRear = keys.Defaulted("may-face-rear", Written.YesNo, false, "Whether it can be set as the rear-facing box of a pair, polarity reversed.", "no");
        var flying = keys.Optional("flying", FlyingShapes.Box, "How it hangs, by its maker.");
        var filters = keys.Any("filters", Written.List(Filters), "The filters that a box or processor can set.");
        var leastImpedance = keys.Open("least-impedance", Written.Resistance, "Of an amplifier, the least that one channel drives.");
        return row => new Loudspeaker(
            top(row), below(row), rear(row), mayPair(row), pairedEnds(row), mayFly(row), aimRange(row), delayRange(row), software(row), impedance(row))
        {
            IsSub = sub(row),
            MayFaceRear = mayFaceRear(row),
            Flying = flying(row),
            Filters = filters(row),
            LeastImpedance = leastImpedance(row),
        };
    });
}
