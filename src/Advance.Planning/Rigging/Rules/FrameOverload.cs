using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/frame-overload</c></summary>
internal sealed class FrameOverload : Rule<FrameOverload.Case>
{
    public override string Name => "rigging/frame-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "More hangs under a frame than it may carry.";

    public override string Why => "Everything hangs on that one frame.";

    public override string Cures => "Fewer boxes, or a stronger frame.";

    public override Publication Source => Handbook.RiggingStandards.Enclosures;

    // Where nobody knows what hangs there, another rule asks.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.UnderFrame.Value is not null && hang.Stack.Frame?.Piece.Kind?.FlyingFrame is not null
        select new Case(hang, hang.Stack.Frame!.Piece.Kind!.FlyingFrame!.Rating is { } rating ? Figure.From(rating) : new Figure<Mass>(null, Domain.Facts.Doubts.None, Reason.Derived.It));

    protected override Said Say(Case found) => found.Rating.Value is { } rating
        ? new($"{found.Hang.Stack.Stack.Name}: {found.Hang.UnderFrame.Value!.Value} under {found.Hang.Stack.Frame!.Piece.Item}, which may carry {rating}.", "Fewer boxes, or a stronger frame.", $"{found.Hang.UnderFrame.Value!.Value} of {rating}")
        : new($"{found.Hang.Stack.Stack.Name}: nobody knows what {found.Hang.Stack.Frame!.Piece.Item} may carry, and {found.Hang.UnderFrame.Value!.Value} hang under it.", "Write its rating to its kind.", $"{found.Hang.UnderFrame.Value!.Value}, unknown");

    internal sealed record Case(HangPlan Hang, Figure<Mass> Rating)
        : Judgement(Hang.Written / "frame", Hang.Placed.Hang.At, Hang.UnderFrame.AtMost(Rating), Hang.UnderFrame.RestsOn.With(Rating.RestsOn));
}
