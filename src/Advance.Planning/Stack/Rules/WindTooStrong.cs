using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>stack/wind-too-strong</c></summary>
internal sealed class WindTooStrong : Rule<WindTooStrong.Case>
{
    public override string Name => "stack/wind-too-strong";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Something stands the stated gust, but not with the ratio that the company asks for, or only if joints hold of which nobody knows what they carry.";

    public override string Why => "Weights, friction and gusts are never known so well that a ratio of one is enough.";

    public override string Cures => "Fix ballast to it, lower it, or take it down at a smaller gust and write that under wind.";

    public override Publication Source => Publication.CommonPractice;

    // What tips or slides outright is said by those rules; a friction that nobody knows is one question for all that stands on it.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var cases = plan.Standing.Worst
            .Where(item => item.Limit?.Value is not null && item.Gust.Value is not null && !Falls(item))
            .Select(item => new Case(item, Verdict(item, plan), item.Written, item.At))
            .ToList();
        var asked = cases.Where(found => found.IsAboutGround).ToList();
        return asked.Count == 0 ? cases : cases.Where(found => !found.IsAboutGround).Append(asked.MinBy(found => found.Item.Limit!.Value!.Value)! with
        {
            Where = StandingSite.Address / "friction",
            At = plan.Standing.Site.Ground?.At ?? plan.Standing.Site.At,
            Names = string.Join(", ", asked.Select(found => found.Item.WrittenName)),
        });
    }

    protected override Said Say(Case found)
    {
        var (item, limit) = (found.Item, found.Item.Limit!.Value!.Value);
        if (found.Joint is { } joint)
        {
            var asked = joint.Edges.Max(edge => edge.ForJoint?.Value?.NewtonMeters ?? 0);
            var carries = joint.JointStrength?.Value is { } strength ? Words.Of($"it carries {strength}") : "nobody says what it carries";
            return new(
                $"{joint.Name}: its joint ({joint.Joint}) has to hold {UnitsNet.Torque.FromNewtonMeters(asked)} in a gust of {item.Gust.Value!.Value}; {carries}.",
                "Ask its maker, or strap what stands there down to the base.",
                $"{UnitsNet.Torque.FromNewtonMeters(asked)}");
        }

        if (found.IsAboutGround)
        {
            return new(
                $"{found.Names}: friction under it unknown; with the company's figure it slides at a gust of {limit} with the ratio asked for, and {item.Gust.Value!.Value} is stated.",
                "Measure the friction of the wet pair, and write it under ground or for the stack.",
                $"{limit} of {item.Gust.Value!.Value}, friction unknown");
        }

        return new(
            $"{item.Name}: {item.LimitFrom} at a gust of {limit} with the ratio asked for; {item.Gust.Value!.Value} is stated.",
            item.Ballast?.Value is { Kilograms: > 0 } lacks
                ? Words.Of($"Fix {Tips.Up(lacks)} of ballast to the middle of its base, lower it, or write under wind that it comes down at {item.Act!.Value!.Value}.")
                : Words.Of($"Join it, lower it, or write under wind that it comes down at {item.Act!.Value!.Value}."),
            $"{limit} of {item.Gust.Value!.Value}");
    }

    private static bool Falls(StandingItem item) =>
        item.Loose.Any(body => body.StandsByItself == false || body.WorstTipping?.Tipping?.Value < 1 || body.WorstSliding?.Sliding?.Value < 1);

    private static Verdict Verdict(StandingItem item, Plan plan)
    {
        var weak = WeakJoint(item);
        var isLowered = plan.Standing.Site.Wind?.Lowered.Any(row => (row.What == item.Name || row.What == item.WrittenName) && row.From is { IsKnown: true } from && from.Value <= item.Limit!.Value!.Value) == true;
        var holds = item.Gust.AtMost(item.Limit!);
        return (holds, isLowered, weak) switch
        {
            (_, true, _) => Domain.Figures.Verdict.Holds,
            (Domain.Figures.Verdict.Fails, _, _) => item.IsLimitByAssumedFriction ? Domain.Figures.Verdict.CannotBeJudged : Domain.Figures.Verdict.Fails,
            (_, _, { JointStrength.Value: not null }) => Domain.Figures.Verdict.Fails,
            (_, _, { }) => Domain.Figures.Verdict.CannotBeJudged,
            _ => holds,
        };
    }

    private static StandingBody? WeakJoint(StandingItem item) => item.Interfaces.FirstOrDefault(body => !body.IsLoose && body.Edges.Any(edge =>
        edge.ForJoint?.Value is { NewtonMeters: > 0 } asked && !(body.JointStrength?.Value >= asked)));

    internal sealed record Case(StandingItem Item, Verdict Verdict, Address Where, Mark At) : Judgement(Where, At, Verdict, Item.RestsOn)
    {
        public string Names { get; init; } = "";

        public bool IsAboutGround => Verdict == Domain.Figures.Verdict.CannotBeJudged && Item.IsLimitByAssumedFriction && Joint is null;

        public StandingBody? Joint => Item.Gust.AtMost(Item.Limit!) == Domain.Figures.Verdict.Fails ? null : WeakJoint(Item);
    }
}
