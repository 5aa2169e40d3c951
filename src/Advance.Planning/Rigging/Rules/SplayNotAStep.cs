using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/splay-not-a-step</c></summary>
internal sealed class SplayNotAStep : Rule<SplayNotAStep.Case>
{
    public override string Name => "rigging/splay-not-a-step";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A box is to be at an angle that its links have no hole for.";

    public override string Why => "It cannot be pinned so, and what is then pinned is another hang than this.";

    public override string Cures => "One of the steps of its links.";

    public override Publication Source => Handbook.RiggingStandards.Enclosures;

    // Of a stack without steps in the stock nothing can be said.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        from box in hang.Boxes
        where box.Splay.Value is not null && Steps(box).Count > 0
        select new Case(hang, box);

    protected override Said Say(Case found) => new(
        $"{found.Hang.Stack.Stack.Name}: box {found.Box.Box.Position}, {found.Box.Box.Piece.Item}, at {found.Box.Splay.Value!.Value} to what it hangs on; its links have {string.Join(", ", Steps(found.Box).Select(step => FormattableString.Invariant($"{step.Degrees:0.##}")))} deg.",
        "One of these.",
        $"{found.Box.Splay.Value!.Value}");

    private static IReadOnlyList<Angle> Steps(HangBoxPlan box) => box.Box.Piece.Kind?.Loudspeaker?.Flying?.Splays ?? [];

    internal sealed record Case(HangPlan Hang, HangBoxPlan Box) : Judgement(
        Hang.Written / Box.Box.Position / "splay",
        Hang.Placed.Hang.At,
        Steps(Box).Any(step => Math.Abs(step.Degrees - Box.Splay.Value!.Value.Degrees) < 1e-6) ? Verdict.Holds : Verdict.Fails,
        Box.Splay.RestsOn);
}
