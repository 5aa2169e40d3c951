using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>stack/no-joint</c></summary>
internal sealed class NoJoint : Rule<NoJoint.Case>
{
    public override string Name => "stack/no-joint";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "One box stands on another or hangs from it, and no joint in the stock lets these two faces do that.";

    public override string Why => "Boxes that are not joined walk with the bass, and the upper one comes down; what hangs by nothing falls.";

    public override string Cures => "Turn a box, change their order, put the joint into the stock, or write a strap and accept it.";

    public override Publication Source => Publication.CommonPractice;

    // What no stock has is asked about by stock/too-few.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from stack in plan.Sound.Piles
        from touching in stack.Interfaces
        where touching.WantsJoint && touching.IsKnown
        select new Case(stack, touching);

    protected override Said Say(Case found)
    {
        var (lower, upper) = (found.Touching.Lower, found.Touching.Upper);
        var (below, above) = (Face(lower.TopFace), Face(upper.BottomFace));
        return found.Touching.IsHanging
            ? new(
                $"{found.Stack.Stack.Name}: nothing in the stock lets {lower.Piece.Item}, box {lower.Position}, hang from {upper.Piece.Item}: {Face(lower.TopFace)} under {Face(upper.BottomFace)}.",
                "Put the joint that does it, for hanging, into the stock, or change box or frame.",
                $"{Face(lower.TopFace)} under {Face(upper.BottomFace)}")
            : new(
            $"{found.Stack.Stack.Name}: nothing in the stock joins {upper.Piece.Item}, box {upper.Position}, to {lower.Piece.Item} below it: {above} on {below}.",
            "Turn one of them, change their order, or put the joint that does it into the stock.",
            $"{above} on {below}");
    }

    private static string Face(string? face) => string.IsNullOrEmpty(face) ? "no mating face" : face;

    internal sealed record Case(StackPlan Stack, Interface Touching) : Judgement(
        Stack.Written / Touching.Joined.Position,
        Stack.Stack.At,
        Touching.Joint is null ? Verdict.Fails : Verdict.Holds,
        Stack.RestsOn);
}
