using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>stack/no-joint</c></summary>
internal sealed class NoJoint : Rule<NoJoint.Case>
{
    public override string Name => "stack/no-joint";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "One box stands on another, and no joint in the stock lets these two faces stand on each other.";

    public override string Why => "Boxes that are not joined walk with the bass, and the upper one comes down.";

    public override string Cures => "Turn a box, change their order, put the joint into the stock, or write a strap and accept it.";

    public override Publication Source => Publication.CommonPractice;

    // What no stock has is asked about by stock/too-few.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from stack in plan.Sound.Stacks
        from touching in stack.Interfaces
        where touching.WantsJoint && touching.IsKnown
        select new Case(stack, touching);

    protected override Said Say(Case found)
    {
        var (lower, upper) = (found.Touching.Lower, found.Touching.Upper);
        var (below, above) = (Face(lower.TopFace), Face(upper.BottomFace));
        return new(
            $"{found.Stack.Stack.Name}: nothing in the stock joins {upper.Piece.Item}, box {upper.Position}, to {lower.Piece.Item} below it: {above} on {below}.",
            "Turn one of them, change their order, or put the joint that does it into the stock.",
            $"{above} on {below}");
    }

    private static string Face(string? face) => string.IsNullOrEmpty(face) ? "no mating face" : face;

    internal sealed record Case(StackPlan Stack, Interface Touching) : Judgement(
        Stack.Written / Touching.Upper.Position,
        Stack.Stack.At,
        Touching.Upper.Joint is null ? Verdict.Fails : Verdict.Holds,
        Stack.RestsOn);
}
