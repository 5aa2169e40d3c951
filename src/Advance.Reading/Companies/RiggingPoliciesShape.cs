using Advance.Domain.Companies;
using Advance.Reading.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Reading.Companies;

/// <summary>How a company reckons what hangs.</summary>
internal static class RiggingPoliciesShape
{
    public static readonly RecordShape<RiggingPolicies> It = new("rigging-policies", "How what hangs is reckoned.", keys =>
    {
        var standard = RiggingPolicies.Default;
        var dynamic = keys.Defaulted("dynamic-factor", Written.Percentage, Ratio.FromPercent(standard.DynamicFactor * 100), "What is reckoned with while it moves, of what hangs.", "125 %");
        var uneven = keys.Defaulted("uneven", Written.Length, standard.Uneven, "How far a hook may be off level at rest, or half a link where that is more.", "10 mm");
        var lag = keys.Defaulted("start-lag", Written.Duration, standard.StartLag, "How much later one hoist may start than another.", "0.25 s");
        var spread = PolicyKeys.Percent(keys, "speed-spread", standard.SpeedSpread, "How much faster one hoist may run than another.");
        var every = keys.Defaulted("level-every", Written.Length, standard.LevelEvery, "After how much travel hoists are levelled again.", "2 m");
        var speed = keys.Defaulted("hoist-speed", Written.As(Quantities.Speed), standard.HoistSpeed, "Of a hoist whose speed nobody says.", "4 m/min");
        var use = PolicyKeys.Percent(keys, "rigging-use", standard.Use, "A part that bears more of its rating is a concern.");
        var angle = keys.Defaulted("bridle-angle", Written.Angle, standard.BridleAngle, "Between two legs of a bridle, beyond which it is a concern.", "90 deg");
        var used = PolicyKeys.Percent(keys, "used-truss", standard.UsedTruss, "What is left of a maker's figures for new truss.");
        var reserve = keys.Defaulted("chain-reserve", Written.Length, standard.ChainReserve, "How much chain stays on a hoist beyond its lift.", "1 m");
        var least = PolicyKeys.Percent(keys, "least-pick", standard.LeastPick, "A pick that carries less of what it carries level is nearly slack.");
        var limiter = keys.Defaulted("limiter", Written.Percentage, Ratio.FromPercent(standard.Limiter * 100), "What a hoist pulls at most when its load catches, of what it lifts, where nobody says when its limiter slips.", "160 %");
        var within = keys.Defaulted("bridle-within", Written.Length, standard.BridleWithin, "How far from where it is wanted a bridle may hang its hook.", "50 mm");
        var over = PolicyKeys.Percent(keys, "over-people", standard.OverPeople, "What is left over people of what a sling, steel or shackle may carry.");
        var hitch = keys.Defaulted("hitch", SlingHitchShape.It, standard.Hitch, "How a roundsling is laid where nobody says.", "choked");
        var bond = keys.Defaulted("bond-above", Written.Length, standard.BondAbove, "What hangs higher above what is below it needs something that holds it when its fixing lets go.", "2 m");
        var between = keys.Defaulted("between-nodes", Written.Weight, standard.BetweenNodes, "What may hang between the nodes of a truss, in one place, where its maker does not say.", "50 kg");
        var atNode = keys.Defaulted("at-node", Written.Length, standard.AtNode, "How far from a node of a truss still counts as at it.", "100 mm");
        var near = keys.Defaulted("near-table", Written.Angle, standard.NearTable, "How near a hang may come to the tilt that its maker's table ends at.", "2 deg");
        var plumb = keys.Defaulted("off-plumb", Written.Angle, standard.OffPlumb, "How far a chain may be off plumb.", "3 deg");
        var tolerance = keys.Defaulted("tilt-tolerance", Written.Angle, standard.TiltTolerance, "How far a hang may tilt other than it is to.", "1 deg");
        return row => new RiggingPolicies
        {
            Limiter = limiter(row).DecimalFractions,
            BridleWithin = within(row),
            OverPeople = over(row),
            Hitch = hitch(row),
            BondAbove = bond(row),
            DynamicFactor = dynamic(row).DecimalFractions,
            Uneven = uneven(row),
            StartLag = lag(row),
            SpeedSpread = spread(row),
            LevelEvery = every(row),
            HoistSpeed = speed(row),
            Use = use(row),
            BridleAngle = angle(row),
            UsedTruss = used(row),
            ChainReserve = reserve(row),
            LeastPick = least(row),
            BetweenNodes = between(row),
            AtNode = atNode(row),
            NearTable = near(row),
            OffPlumb = plumb(row),
            TiltTolerance = tolerance(row),
        };
    });
}
