using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>stack/twists</c></summary>
internal sealed class Twists : Rule<Twists.Case>
{
    public override string Name => "stack/twists";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Wind on a sign or a screen pushes off its middle and turns it on its feet, though straight on it would not slide.";

    public override string Why => "It swings round with its whole width, and then tips over a corner.";

    public override string Cures => "Feet further apart, ballast fixed to it, or join it to something that holds.";

    public override Publication Source => En1991.Forces;

    // What slides already, or stands on ground whose friction is asked for so, is said by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from item in plan.Standing.Items
        where item.Turning is not null && item.Whole.WorstSliding?.Sliding?.Value is >= 1
        group item by item.Written into pair
        select new Case(pair.MinBy(item => item.Turning!.Value ?? double.MinValue)!);

    protected override Said Say(Case found) => found.Item.Turning!.Value is not { } held
        ? new($"{found.Item.WrittenName}: nobody knows whether wind turns it on its feet: they are not in two rows, or not known.", "Write its feet, or join it to something that holds.", $"unknown")
        : found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Item.WrittenName}: friction under it unknown; with the company's figure a gust of {found.Item.Gust.Value!.Value} turns it on its feet, {Tips.Two(held)} of that is held.", "Measure the friction of the wet pair, or join it to something that holds.", $"ratio {Tips.Two(held)}, friction unknown")
        : new($"{found.Item.WrittenName}: a gust of {found.Item.Gust.Value!.Value} turns it on its feet: friction holds {Tips.Two(held)} of that.", Cures, $"ratio {Tips.Two(held)}");

    private static Verdict Judge(StandingItem item) => item.Turning!.Value is not { } held ? Verdict.CannotBeJudged
        : held >= 1 ? Verdict.Holds : item.Whole.IsFrictionAssumed ? Verdict.CannotBeJudged : Verdict.Fails;

    internal sealed record Case(StandingItem Item) : Judgement(Item.Written / "twist", Item.At, Judge(Item), Item.Turning!.RestsOn.With(Item.Whole.Holds.RestsOn));
}
