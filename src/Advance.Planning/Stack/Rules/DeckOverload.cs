using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>stack/deck-overload</c></summary>
internal sealed class DeckOverload : Rule<DeckOverload.Case>
{
    public override string Name => "stack/deck-overload";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Something that stands on the stage presses more, or one foot of it bears more, than the deck carries; or nobody says what that is.";

    public override string Why => "A deck is rated for people; a stack goes through it, or pushes its legs away.";

    public override string Cures => "Spread the load with boards over the legs, put legs under it, or stand it beside the stage.";

    public override Publication Source => En1997.EffectiveWidth;

    // What the deck carries is asked once a stage.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        if (plan.Brief.Gig.Stages.Count == 0)
        {
            yield break;
        }

        var stage = plan.Brief.Gig.Stages[0];
        var items = plan.Standing.Items.Where(item => item.On == Footing.Deck && item.Ground is not null).ToList();
        if (stage.DeckRating is not { IsKnown: true } && stage.LegRating is not { IsKnown: true })
        {
            var isAsked = items.Count > 0;
            yield return new Case(Address.Of("stage") / "deck-rating", stage.At, isAsked ? Verdict.CannotBeJudged : Verdict.Holds, Doubts.Of(stage.DeckRating?.Doubt)) { Names = string.Join(", ", items.Select(item => item.Name)) };
            yield break;
        }

        foreach (var pair in items.Select(item => CaseOf(item, stage)).GroupBy(found => found.Where))
        {
            yield return pair.OrderBy(found => found.Verdict == Verdict.Fails ? 0 : found.Verdict == Verdict.CannotBeJudged ? 1 : 2).First();
        }
    }

    protected override Said Say(Case found) => found.Item is not { } item
        ? new($"Nobody says what the deck carries that {found.Names} stands on.", "Ask whoever built it, and write deck-rating for the stage.", "rating unknown")
        : new(
            $"{item.Name}: {found.Has} on the deck, which carries {found.May}.",
            Cures,
            $"{found.Has} of {found.May}");

    private static Case CaseOf(StandingItem item, Stage stage)
    {
        var ground = item.Ground!;
        var where = item.Written / "deck";
        if (ground.Foot is { } foot && stage.LegRating is { IsKnown: true } leg)
        {
            var may = Figure.From(leg.Select(mass => Force.FromNewtons(mass.Kilograms * TipAndSlide.Gravity)));
            return new Case(where, item.At, foot.AtMost(may), foot.RestsOn.With(may.RestsOn)) { Item = item, Has = Words.Of($"{foot.Value!.Value} on one foot"), May = Words.Of($"{may.Value!.Value}") };
        }

        return ground.Most is { Value: { } has } most && stage.DeckRating is { IsKnown: true } rating
            ? new Case(where, item.At, most.AtMost(Figure.From(rating)), most.RestsOn.With(Doubts.Of(rating.Doubt))) { Item = item, Has = Words.Of($"{has}"), May = Words.Of($"{rating.Value}") }
            : new Case(where, item.At, Verdict.CannotBeJudged, item.RestsOn) { Item = item, Has = "an unknown load", May = stage.DeckRating is { IsKnown: true } known ? Words.Of($"{known.Value}") : "an unknown load" };
    }

    internal sealed record Case(Address Where, Mark At, Verdict Verdict, Doubts RestsOn) : Judgement(Where, At, Verdict, RestsOn)
    {
        public StandingItem? Item { get; init; }

        public string Names { get; init; } = "";

        public Words Has { get; init; } = "";

        public Words May { get; init; } = "";
    }
}
