using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>stage/decks-do-not-fit</c></summary>
internal sealed class DecksDoNotFit : Rule<DecksDoNotFit.Case>
{
    private const double Slack = 1e-6;

    public override string Name => "stage/decks-do-not-fit";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The decks that are written do not make the stage that is written: too few, too many, or of a size that leaves a gap.";

    public override string Why => "A deck that is missing is a hole in the stage, and one too many is carried for nothing.";

    public override string Cures => "Write as many decks as the stage's size asks for, or the size that the decks make.";

    public override Publication Source => Publication.Arithmetic;

    // What no stock has is asked about by stock/too-few.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Stage.Decks.Where(deck => deck.Kind is not null).Select(deck => new Case(deck, Judge(deck)));

    protected override Said Say(Case found)
    {
        var deck = found.Deck;
        if (deck.Wanted.Value is not { } wanted)
        {
            return new(
                $"{deck.Decks.Count} x {deck.Decks.Item}: whether they make the stage cannot be said, for one of the sizes is unknown.",
                "Write the size of the stage, and that of the deck in the stock.",
                $"{deck.Decks.Count} written, size unknown");
        }

        return deck.CanFill == false
            ? new(
                $"{deck.Decks.Count} x {deck.Decks.Item}: decks of that size leave a gap in the stage, however they are laid.",
                "Use decks of another size beside them, or make the stage of whole decks.",
                $"{deck.Decks.Count} written, {wanted} by area")
            : new(
                $"{deck.Decks.Count} x {deck.Decks.Item} written, {wanted} make the stage.",
                $"Write {wanted}, or the size that {deck.Decks.Count} make.",
                $"{deck.Decks.Count} written, {wanted} wanted");
    }

    private static Verdict Judge(DeckPlan deck) => deck.Wanted.Value is not { } wanted
        ? Verdict.CannotBeJudged
        : Math.Abs(wanted - deck.Decks.Count) > Slack || deck.CanFill == false ? Verdict.Fails : Verdict.Holds;

    internal sealed record Case(DeckPlan Deck, Verdict Verdict) : Judgement(Deck.Address, Deck.Stage.At, Verdict, Deck.Wanted.RestsOn);
}
