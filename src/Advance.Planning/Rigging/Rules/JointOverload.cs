using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/joint-overload</c></summary>
internal sealed class JointOverload : Rule<JointOverload.Case>
{
    public override string Name => "rigging/joint-overload";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Between two boxes of a hang the rear link or the front pins carry more than their maker lets them, or nobody knows how much that is.";

    public override string Why => "How hard a link is pulled goes by the curve of the whole hang, not by how many boxes there are.";

    public override string Cures => "Fewer boxes, less splay at the top, another tilt, or the maker's figures.";

    public override Publication Source => Handbook.Statics.Equilibrium;

    // The fullest joint stands for all.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.State is not null && hang.Boxes.Count > 0
        select CaseOf(hang);

    protected override Said Say(Case found) => found.Verdict == Verdict.Fails
        ? new($"{found.Hang.Stack.Stack.Name}: {found.Force.Value!.Value} on {found.What} above {found.Box.Box.Piece.Item}, box {found.Box.Box.Position}, while it moves, and it may bear {found.Limit.Value!.Value}.", "Fewer boxes, less splay at the top, or another tilt.", $"{found.Force.Value!.Value} of {found.Limit.Value!.Value}")
        : new($"{found.Hang.Stack.Stack.Name}: what its links and pins carry cannot be held against their limits; the stock does not say all of {found.Box.Box.Piece.Item}.", "Write link arm and limits to its kind, or go by the maker's own calculation and accept it.", $"box {found.Box.Box.Position}, unknown");

    private static Case CaseOf(HangPlan hang)
    {
        var joints = hang.Boxes.SelectMany(box => new[] { (Box: box, What: "the rear link", Force: Size(box.Rear), Limit: box.RearLimit), (Box: box, What: "the front pins", Force: box.Front, Limit: box.FrontLimit) }).ToList();
        var fullest = joints.Where(joint => joint.Force.Value is not null && joint.Limit.Value is { Newtons: > 0 }).OrderByDescending(joint => joint.Force.Value!.Value.Newtons / joint.Limit.Value!.Value.Newtons).FirstOrDefault();
        var unknown = joints.Find(joint => joint.Force.AtMost(joint.Limit) == Verdict.CannotBeJudged);
        var one = fullest.Box is not null && (unknown.Box is null || fullest.Force.AtMost(fullest.Limit) == Verdict.Fails) ? fullest : unknown;
        return new Case(hang, one.Box, one.What, one.Force, one.Limit);
    }

    // A link that pushes is loaded as well.
    private static Figure<Force> Size(Figure<Force> force) => force with { Value = force.Value is { } pull ? Force.FromNewtons(Math.Abs(pull.Newtons)) : null };

    internal sealed record Case(HangPlan Hang, HangBoxPlan Box, string What, Figure<Force> Force, Figure<Force> Limit)
        : Judgement(Hang.Written / "links", Hang.Placed.Hang.At, Force.AtMost(Limit), Force.RestsOn.With(Limit.RestsOn));
}
