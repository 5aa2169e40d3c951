using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>sound/rear-box-not-set</c></summary>
internal sealed class RearBoxNotSet : Rule<RearBoxNotSet.Case>
{
    public override string Name => "sound/rear-box-not-set";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A rear-facing box can neither itself be delayed and reversed in polarity, nor hangs on an output that is.";

    public override string Why => "Without both it cancels nothing behind the stack and something in front of it.";

    public override string Cures => "Give the rear-facing boxes outputs of their own with rear-fed-by, or use a box that the stock says may-face-rear.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Drive.Boxes.Where(box => box.Box.IsRearFacing && box.Box.Piece.Kind is not null).Select(box => new Case(box, Judge(box)));

    protected override Said Say(Case found)
    {
        var (box, stack) = (found.Driven.Box, found.Driven.Stack.Stack.Name);
        if (found.Driven.RearDelay?.Value is not { } delay)
        {
            return new(
                $"{stack}: by how much {box.Piece.Item}, box {box.Position}, must be later than the front is not known, for its depth is not.",
                "Write its size in the stock.",
                $"{box.Piece.Item}, depth unknown");
        }

        return new(
            $"{stack}: {box.Piece.Item}, box {box.Position}, faces the rear and wants {delay} and reversed polarity; {Lack(found.Driven)}.",
            "Give the rear-facing boxes outputs of their own with rear-fed-by, and write no other polarity there.",
            $"box {box.Position}, {delay}");
    }

    private static string Lack(DrivenBox driven) => driven.Output is { Row.Polarity: { } written } output && written.Or(Polarity.Reversed) == Polarity.Normal
        ? $"its output of {output.Device.Name} is written normal"
        : $"neither it nor an output of its own can do both";

    private static Verdict Judge(DrivenBox driven)
    {
        if (driven.RearDelay?.Value is null)
        {
            return Verdict.CannotBeJudged;
        }

        var isSetBefore = driven.Output is { Delayed: DelayedHere.StackAndRear };
        var delayer = isSetBefore || IsWrittenForRear(driven) ? driven.Output!.Device.Kind : driven.Box.Piece.Kind;
        var isBefore = driven.Output?.Set.Polarity.Value == Polarity.Reversed;
        var canReverse = isBefore || driven.Box.Piece.Kind?.Loudspeaker?.MayFaceRear == true;
        return IsReversed(driven) && canReverse && delayer is not null && OutputSettings.CanDelay(delayer) ? Verdict.Holds : Verdict.Fails;
    }

    private static bool IsReversed(DrivenBox driven) =>
        (driven.Output?.Set.Polarity.Value == Polarity.Reversed) != (driven.Set.Polarity.Value == Polarity.Reversed);

    private static bool IsWrittenForRear(DrivenBox driven) =>
        driven.Output is { Delayed: DelayedHere.AsWritten } output && output.Feeds.All(fed => fed.Box.IsRearFacing);

    internal sealed record Case(DrivenBox Driven, Verdict Verdict) : Judgement(
        Driven.Stack.Written / Driven.Box.Position, Driven.Stack.Stack.RearFedBy?.At ?? Driven.Stack.Stack.At, Verdict, Driven.Stack.RestsOn);
}
