using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>rigging/people-below-moving</c></summary>
internal sealed class PeopleBelowMoving : Rule<PeopleBelowMoving.Case>
{
    public override string Name => "rigging/people-below-moving";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A truss moves over people.";

    public override string Why => "That is another trade: other hoists, other controls, other people.";

    public override string Cures => "Clear the area while it moves, or have it engineered and run by those who are licensed for it.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.Placed.Truss.Below is { IsKnown: true }).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new($"{found.Truss.Name} moves over people.", "Clear the area while it moves, or have it engineered for that.", $"moving");

    internal sealed record Case(TrussPlan Truss) : Judgement(
        Truss.Address / "below", Truss.Placed.Truss.At, Truss.Placed.Truss.Below!.Value.Value == PeopleBelow.Moving ? Verdict.Fails : Verdict.Holds, Doubts.Of(Truss.Placed.Truss.Below?.Doubt));
}
