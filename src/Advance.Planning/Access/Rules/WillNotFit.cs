using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>access/will-not-fit</c></summary>
internal sealed class WillNotFit : Rule<WillNotFit.Case>
{
    public override string Name => "access/will-not-fit";

    public override Severity Severity => Severity.Stop;

    public override string Catches =>
        "Something that cannot be taken apart does not come through a door, round a corner or onto a lift on the way in, however it is turned; what four cannot lift is not turned.";

    public override string Why => "It stays outside, and the show is planned with it.";

    public override string Cures => "Find another way in, use something smaller, or write in the stock how it travels folded (travels).";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var passages = plan.Load.Passages;
        return [.. Chain(plan), .. passages.GroupBy(passage => passage.Item, StringComparer.Ordinal).Select(OfItem), .. Open(passages)];
    }

    protected override Said Say(Case found) => found switch
    {
        { Passage: null } => new("Nobody knows the way in: whether anything fits cannot be judged.", "Write access in the venue, from the road to the stage.", "access unknown"),
        { Verdict: Verdict.Fails } => new($"{found.Thing} does not {Through(found.Passage)}.", Cures, Figures(found.Passage)),
        { Passage.Hindrance: Hindrance.Size } => new(
            $"{found.Thing}: nobody knows the size, so whether it comes in cannot be judged.",
            "Write size, or how it travels, in the stock.",
            "size unknown"),
        _ => new(
            $"{found.Passage.Step.What}: nobody knows how much comes through; {found.Thing} must.",
            "Ask the venue to measure it.",
            "clear size unknown"),
    };

    // A way in that was left out is another gig's worry; one that is still a question is this one's.
    private static IEnumerable<Case> Chain(Plan plan)
    {
        var access = plan.Brief.Venue.Access;
        return access is { IsKnown: false, Doubt: { LeftOut: false } doubt } && plan.Stock.Units.Count > 0
            ? [new Case(Address.Of("access"), null, "", Verdict.CannotBeJudged, access.At, Doubts.Of(doubt))]
            : [];
    }

    private static Case OfItem(IEnumerable<Passage> ofItem)
    {
        var passages = ofItem.ToList();
        var failed = passages.Find(passage => passage.Verdict == Verdict.Fails && (!passage.IsCase || passage.Stuck.Count > 0));
        var shown = failed ?? passages[0];
        return new Case(
            shown.Address,
            shown,
            failed?.IsCase == true ? string.Join(", ", shown.Stuck) : shown.Item,
            failed is null ? Verdict.Holds : Verdict.Fails,
            shown.Step.At,
            shown.RestsOn);
    }

    // A door that nobody measured is one question, whatever must come through it.
    private static IEnumerable<Case> Open(IReadOnlyList<Passage> passages) =>
        passages.Where(passage => passage.Verdict == Verdict.CannotBeJudged)
            .GroupBy(passage => passage.Hindrance == Hindrance.Size ? passage.Item : $"at {passage.Step.What}", StringComparer.Ordinal)
            .Select(group => group.First())
            .Select(first => new Case(first.Address, first, first.Item, Verdict.CannotBeJudged, first.Step.At, first.RestsOn));

    private static Words Through(Passage passage) => passage.Hindrance switch
    {
        Hindrance.Load => $"go onto the {passage.Step.What}: {passage.Gross.Value ?? Mass.Zero}, {passage.Step.Load?.Or(Mass.Zero) ?? Mass.Zero} allowed",
        Hindrance.Corner => $"go round the {passage.Step.What}: {AccessWords.Size(passage)}, {AccessWords.Corner(passage)}",
        _ => $"come through the {passage.Step.What}: {AccessWords.Size(passage)}, {AccessWords.Opening(passage.Step)}",
    };

    private static Words Figures(Passage passage) => passage.Hindrance == Hindrance.Load
        ? $"{passage.Gross.Value ?? Mass.Zero}"
        : AccessWords.Size(passage);

    internal sealed record Case(Address Where, Passage? Passage, string Thing, Verdict Verdict, Mark At, Doubts RestsOn)
        : Judgement(Where, At, Verdict, RestsOn);
}
