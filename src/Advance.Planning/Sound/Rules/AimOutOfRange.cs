using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>sound/aim-out-of-range</c></summary>
internal sealed class AimOutOfRange : Rule<AimOutOfRange.Case>
{
    public override string Name => "sound/aim-out-of-range";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The electronic aim that is written is more than a box can do, or no box of the stack has one.";

    public override string Why => "What the box cannot do it does not do, and the last rows hear it.";

    public override string Cures => "Write an aim in the range of the boxes, or tilt and turn them.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Drive.Boxes.GroupBy(box => box.Stack.Address).SelectMany(boxes => Judge([.. boxes]));

    protected override Said Say(Case found)
    {
        var (stack, aim) = (found.Stack.Stack.Name, found.Aim.Value ?? Angle.Zero);
        return found switch
        {
            { Box: null } => new(
                $"{stack}: electronic aim of {aim} wanted, and no box of it has any.",
                "Leave electronic-aim out, or use boxes that have it.",
                $"{aim}, no box"),
            { Verdict: Verdict.CannotBeJudged } => new(
                $"{stack}: whether {found.Box.Piece.Item} can be aimed so far is not known.",
                "Write electronic-aim, and aim-range in the stock.",
                $"{found.Box.Piece.Item}, unknown"),
            _ => new(
                $"{stack}: electronic aim of {aim} wanted, {found.Box.Piece.Item} has {found.Range.Value ?? default} either way.",
                $"Write {found.Range.Value ?? default} or less, or tilt the boxes.",
                $"{aim}, {found.Range.Value ?? default}"),
        };
    }

    private static IEnumerable<Case> Judge(IReadOnlyList<DrivenBox> boxes)
    {
        var stack = boxes[0].Stack;
        if (stack.Stack.ElectronicAim is not { } written)
        {
            yield break;
        }

        var aim = Figure.From(written);
        foreach (var box in boxes.Where(box => box.Set.Aim is not null).DistinctBy(box => box.Box.Piece.Item))
        {
            var range = Figure.From(box.Box.Piece.Kind!.Loudspeaker!.AimRange!.Value);
            var either = aim with { Value = aim.Value is { } angle ? Angle.FromDegrees(Math.Abs(angle.Degrees)) : null };
            yield return new Case(stack, box.Box, aim, range, either.AtMost(range), written.At);
        }

        // A box that no stock describes may have an aim; stock/too-few asks what it is.
        if (boxes.All(box => box.Set.Aim is null && box.Box.Piece.Kind is not null) && aim.Value is not { Degrees: 0 })
        {
            yield return new Case(stack, null, aim, new Figure<Angle>(null, Doubts.None, Reason.Derived.It), Verdict.Fails, written.At);
        }
    }

    internal sealed record Case(StackPlan Stack, StackedBox? Box, Figure<Angle> Aim, Figure<Angle> Range, Verdict Verdict, Mark At)
        : Judgement(Stack.Written / "electronic-aim", At, Verdict, Aim.RestsOn.With(Range.RestsOn));
}
