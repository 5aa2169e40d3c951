using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>sound/delay-out-of-range</c></summary>
internal sealed class DelayOutOfRange : Rule<DelayOutOfRange.Case>
{
    public override string Name => "sound/delay-out-of-range";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A stack is to be delayed by more than the processor or box can do that would do it, or by one that cannot delay.";

    public override string Why => "A stack that is early is heard as the place that the sound comes from, and blurs every word behind it.";

    public override string Cures => "Hang it on a processor with a longer delay, or stand it nearer to what it is timed from.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Drive.Outputs.Select(OfOutput).Concat(plan.Drive.Boxes.Select(OfBox)).OfType<Case>();

    protected override Said Say(Case found)
    {
        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new(
                $"{found.Stack.Stack.Name}: whether {found.Who} can delay it as far as it must is not known.",
                "Say where the stacks stand, and delay-range in the stock.",
                $"{found.Who}, unknown");
        }

        var delay = found.Delay.Value ?? Duration.Zero;
        return found.Range is { Value: { } range }
            ? new($"{found.Stack.Stack.Name}: {delay} of delay wanted from {found.Who}, which has {range}.", found.Cure, $"{delay}, {range}")
            : new($"{found.Stack.Stack.Name}: {delay} of delay wanted from {found.Who}, which cannot delay.", found.Cure, $"{delay}, no delay");
    }

    private static Case? OfOutput(DriveOutput output) => output.Feeds.Count == 0
        ? null
        : CaseOf(output.Feeds[0].Stack, output.Set.Delay, output.Device.Kind, output.Device.Name, output.Row?.Delay?.At, "Hang it on a processor with a longer delay.");

    // A rear-facing box that cannot be set is a matter of its own rule.
    private static Case? OfBox(DrivenBox box) => box.RearDelay is not null && !OutputSettings.CanDelay(box.Box.Piece.Kind) ? null : CaseOf(
        box.Stack, box.Set.Delay, box.Box.Piece.Kind, box.Box.Piece.Item, null, "Hang it on an output of its own of a processor that can delay so far.");

    // What is not delayed wants no range; where there is one, the judgement tells how much of it is used.
    private static Case? CaseOf(StackPlan stack, Figure<Duration> delay, Kind? kind, string who, Mark? at, string cure)
    {
        var range = kind?.Loudspeaker?.DelayRange is { } given ? Figure.From(given) : null;
        if (kind is null || (range is null && delay.Value is { Seconds: 0 }))
        {
            return null;
        }

        var verdict = range is null ? (delay.Value is null ? Verdict.CannotBeJudged : Verdict.Fails) : delay.Value is { Seconds: 0 } ? Verdict.Holds : delay.AtMost(range);
        return new Case(stack, delay, range, who, cure, verdict, at ?? stack.Stack.Delay?.At ?? stack.Stack.At);
    }

    internal sealed record Case(StackPlan Stack, Figure<Duration> Delay, Figure<Duration>? Range, string Who, string Cure, Verdict Verdict, Mark At)
        : Judgement(Stack.Written / "delay", At, Verdict, Delay.RestsOn.With(Range?.RestsOn ?? Doubts.None));
}
