using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/not-for-flying</c></summary>
internal sealed class NotForFlying : Rule<NotForFlying.Case>
{
    public override string Name => "rigging/not-for-flying";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A box hangs that its maker does not let fly.";

    public override string Why => "What is no hanging point tears out.";

    public override string Cures => "A box that may fly, or a stack on the ground.";

    public override Publication Source => Handbook.RiggingStandards.Enclosures;

    // What no stock has is asked about by stock/too-few.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Sound.Hangs
        from kind in hang.Boxes.Where(box => box.Piece.Kind is not null).GroupBy(box => box.Piece.Item, StringComparer.Ordinal)
        select new Case(hang, kind.First());

    protected override Said Say(Case found) => new($"{found.Hang.Stack.Name}: {found.Box.Piece.Item} is not said to be for flying.", "A box that may fly; where its maker lets it, write that to its kind.", $"{found.Box.Piece.Item}");

    internal sealed record Case(StackPlan Hang, StackedBox Box) : Judgement(
        Address.Of("rigging") / Hang.Stack.Name / "may-fly" / Box.Piece.Item, Hang.Stack.At, Box.Piece.Kind?.Loudspeaker?.MayFly == true ? Verdict.Holds : Verdict.Fails, Hang.RestsOn);
}
