using Advance.Domain.Companies;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Reading.Companies;

/// <summary>How safely things stand.</summary>
internal static class StandingPoliciesShape
{
    public static readonly RecordShape<StandingPolicies> It = new("standing-policies", "How safely things stand.", keys =>
    {
        var usual = StandingPolicies.Default;
        var ratio = keys.Defaulted("ratio", Written.Factor, usual.Ratio, "What holds over what tips or pushes.", "1.5");
        var catalogue = Percent(keys, "catalogue-share", usual.CatalogueShare, "Of a weight that nobody weighed, what counts as holding.");
        var friction = keys.Defaulted("friction", Written.Factor, usual.Friction, "Where nobody says.", "0.2");
        var prepare = Percent(keys, "prepare", usual.Prepare, "Of the gust that a thing stands: make ready.");
        var act = Percent(keys, "act", usual.Act, "Of the gust that a thing stands: lower or clear.");
        var within = keys.Defaulted("lower-within", Written.Duration, usual.LowerWithin, "What comes down in wind takes no longer.", "10 min");
        var from = keys.Defaulted("from-height", Written.Length, usual.FromHeight, "Lower things are not judged.", "0.5 m");
        var angle = keys.Defaulted("tip-angle", Written.Angle, usual.TipAngle, "What tips earlier does not stand.", "10 deg");
        var swing = keys.Defaulted("cloth-swing", Written.Angle, usual.ClothSwing, "A cloth that hangs in the open comes down before wind swings it further out.", "15 deg");
        var push = Percent(keys, "push", usual.Push, "Of people and barrows indoors, of the weight.");
        var pushMost = keys.Defaulted("push-most", Written.As(Quantities.Force), usual.PushMost, "That push is no larger.", "250 N");
        var pushHeight = keys.Defaulted("push-height", Written.Length, usual.PushHeight, "It pushes at the top, but no higher.", "1.5 m");
        return row => new StandingPolicies
        {
            Ratio = ratio(row),
            CatalogueShare = catalogue(row).Percent,
            Friction = friction(row),
            Prepare = prepare(row).Percent,
            Act = act(row).Percent,
            LowerWithin = within(row),
            FromHeight = from(row),
            TipAngle = angle(row),
            ClothSwing = swing(row),
            Push = push(row).Percent,
            PushMost = pushMost(row),
            PushHeight = pushHeight(row),
        };
    });

    private static Func<Row, Ratio> Percent(Keys keys, string key, double percent, string words) =>
        keys.Defaulted(key, Written.Percentage, Ratio.FromPercent(percent), words, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{percent} %"));
}
