using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>rigging/held-otherwise</c></summary>
internal sealed class HeldOtherwise : Rule<HeldOtherwise.Case>
{
    public override string Name => "rigging/held-otherwise";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A pick holds other chords of a truss than its maker's figures are for.";

    public override string Why => "A chord that carries a pick alone bends between its nodes, and its welds are for something else: the maker's figures do not hold.";

    public override string Cures => "Sling it as its maker shows, or ask the maker.";

    public override Publication Source => Handbook.RiggingStandards.Truss;

    // Where its maker does not say, or the gig does not, nobody asks.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from truss in plan.Rigging.Trusses
        let figures = truss.Placed.Kind?.Truss?.HeldBy
        from pick in truss.Picks
        let holds = pick.Placed.Pick.Holds
        where figures is not null && holds is not null
        select new Case(pick, holds.Value, figures.Value);

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Pick.Name}: nobody knows which chords its slings hold, and which its maker's figures are for.", "Write both.", $"unknown")
        : new($"{found.Pick.Name} holds {found.Holds.Value.Words()}, and the figures of its truss are for {found.By.Value.Words()}.", "Sling it as its maker shows.", $"{found.Holds.Value.Words()}");

    internal sealed record Case(PickPlan Pick, Given<HeldChords> Holds, Given<HeldChords> By) : Judgement(
        Pick.Address / "chords",
        Pick.Placed.Pick.At,
        !Holds.Is(out var holds) || !By.Is(out var by) ? Verdict.CannotBeJudged : holds == by ? Verdict.Holds : Verdict.Fails,
        Doubts.Of(Holds.Doubt).With(Doubts.Of(By.Doubt)));
}
