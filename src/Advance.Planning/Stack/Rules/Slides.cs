using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>stack/slides</c></summary>
internal sealed class Slides : Rule<Slides.Case>
{
    public override string Name => "stack/slides";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Something that stands slides in the stated wind or by a push of people, or would with the friction that is taken where nobody knows it.";

    public override string Why => "A light box slides before it tips, off its stack or off the stage.";

    public override string Cures => "Fix ballast to it, join it to what it stands on, or measure the friction of the wet pair.";

    public override Publication Source => RigidBodies.Balance;

    // What stands on unknown ground is one question for all of it.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var isInWind = plan.Standing.Site.IsOpenAir == true;
        var found = plan.Standing.Items.SelectMany(item => item.Loose.Select(body => (Item: item, Body: body, Worst: body.WorstSliding))).Where(one => one.Worst is not null).ToList();
        foreach (var pair in found.Where(one => !IsAboutGround(one.Item, one.Body)).GroupBy(one => WhereOf(one.Item, one.Body)))
        {
            var (item, body, worst) = pair.MinBy(one => one.Worst!.Sliding!.Value!.Value);
            var verdict = worst!.Sliding!.Value!.Value >= 1 ? Verdict.Holds : body.IsFrictionAssumed ? Verdict.CannotBeJudged : Verdict.Fails;
            yield return new Case(pair.Key, item.At, verdict, worst.Sliding.RestsOn, body.Name, worst, isInWind, item) { Ballast = body == item.Whole ? worst.AgainstSliding : null };
        }

        foreach (var on in found.Where(one => IsAboutGround(one.Item, one.Body)).GroupBy(one => one.Item.On))
        {
            var worst = on.MinBy(one => one.Worst!.Sliding!.Value!.Value);
            var slide = on.Where(one => one.Worst!.Sliding!.Value!.Value < 1).Select(one => one.Item.Name).ToList();
            yield return new Case(
                StandingSite.Address / "friction" / (on.Key == Footing.Deck ? "deck" : "ground"),
                plan.Standing.Site.Ground?.At ?? plan.Standing.Site.At,
                slide.Count > 0 ? Verdict.CannotBeJudged : Verdict.Holds,
                worst.Worst!.Sliding!.RestsOn,
                string.Join(", ", slide),
                worst.Worst,
                isInWind,
                worst.Item);
        }
    }

    protected override Said Say(Case found)
    {
        var ratio = Tips.Two(found.Edge.Sliding!.Value!.Value);
        Words by = found.IsInWind ? (Words)$"in a gust of {found.Item.Gust.Value!.Value}" : $"when people push";
        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new(
                $"{found.Name}: friction under it unknown; with the company's figure it slides {by}, {ratio} of what pushes is held.",
                "Measure the friction of the wet pair, join it to what it stands on, or fix ballast to it.",
                $"ratio {ratio}, friction unknown");
        }

        return new(
            $"{found.Name}: slides {by}: friction holds {ratio} of what pushes.",
            found.Ballast?.Value is { Kilograms: > 0 } lacks ? Words.Of($"Fix {Tips.Up(lacks)} of ballast to it, or join it to what it stands on.") : (Words)Cures,
            $"ratio {ratio}");
    }

    private static bool IsAboutGround(StandingItem item, StandingBody body) => body == item.Whole && body.IsFrictionAssumed;

    private static Address WhereOf(StandingItem item, StandingBody body) => body == item.Whole ? item.Written : item.Written / body.Name[(item.Name.Length + 1)..];

    internal sealed record Case(Address Where, Mark At, Verdict Verdict, Doubts RestsOn, string Name, StandingEdge Edge, bool IsInWind, StandingItem Item)
        : Judgement(Where, At, Verdict, RestsOn)
    {
        public Figure<UnitsNet.Mass>? Ballast { get; init; }
    }
}
