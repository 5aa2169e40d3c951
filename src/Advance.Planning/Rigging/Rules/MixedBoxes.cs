using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/mixed-boxes</c></summary>
internal sealed class MixedBoxes : Rule<MixedBoxes.Case>
{
    public override string Name => "rigging/mixed-boxes";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Boxes of several kinds hang under one frame.";

    public override string Why => "A maker's table is for one kind; what links and frame bear with another among them is not in it.";

    public override string Cures => "Boxes of one kind, or the maker's word that they may hang together.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Rigging.Hangs.Select(hang => new Case(hang, [.. hang.Boxes.Select(box => box.Box.Piece.Item).Distinct(StringComparer.Ordinal)]));

    protected override Said Say(Case found) => new(
        $"{found.Hang.Stack.Stack.Name}: {string.Join(" and ", found.Kinds)} hang under one frame.",
        "Boxes of one kind, or the maker's word that they may hang together.",
        $"{string.Join(", ", found.Kinds)}");

    internal sealed record Case(HangPlan Hang, IReadOnlyList<string> Kinds)
        : Judgement(Hang.Written / "kinds", Hang.Placed.Hang.At, Kinds.Count > 1 ? Verdict.Fails : Verdict.Holds, Doubts.None);
}
