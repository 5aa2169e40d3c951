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

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from truss in plan.Rigging.Trusses where truss.Placed.Truss.Below is { IsKnown: true } select new Case(truss.Name, truss.Address, truss.Placed.Truss.At, truss.Placed.Truss.Below!.Value),
        .. from hang in plan.Rigging.Hangs where hang.Placed.Flown.Below is { IsKnown: true } select new Case(hang.Name, hang.Written, hang.Placed.Hang.At, hang.Placed.Flown.Below!.Value),
    ];

    protected override Said Say(Case found) => new($"{found.Name} moves over people.", "Clear the area while it moves, or have it engineered for that.", $"moving");

    internal sealed record Case(string Name, Address Of, Mark Written, Given<PeopleBelow> Below) : Judgement(
        Of / "below", Written, Below.Value == PeopleBelow.Moving ? Verdict.Fails : Verdict.Holds, Doubts.Of(Below.Doubt));
}
