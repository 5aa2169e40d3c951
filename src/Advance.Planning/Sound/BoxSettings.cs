using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out what is set on the boxes themselves: what the output before them does not do.</summary>
/// <param name="wiring">What feeds what.</param>
/// <param name="units">Devices and boxes.</param>
/// <param name="outputs">Outputs of processors.</param>
/// <param name="settings">How outputs are set.</param>
/// <param name="timings">How stacks are timed.</param>
internal sealed class BoxSettings(
    Wiring wiring, SoundUnits units, IReadOnlyDictionary<Port, DriveOutput> outputs, OutputSettings settings, Timings timings)
{
    private readonly CrossingSurvey crossings = new(units, outputs);

    /// <summary>A box with its way, and what is set on it.</summary>
    public DrivenBox Of(StackPlan stack, StackedBox box)
    {
        var input = new Port(box.Piece.Name, PortKind.Input, Number: null);
        var path = wiring.Trace(input);
        var output = path.Links.Reverse().Select(link => outputs.GetValueOrDefault(link.From.Port)).FirstOrDefault(output => output is not null);
        IReadOnlyList<Crossing> crossed = [.. crossings.Of(stack, box, path)];
        var later = settings.RearDelay(box);
        var (delay, from) = Delay(stack, later, output);
        var set = new DriveSettings(Polarity(box, output), DriveSettings.Neutral.Gain, delay, from)
        {
            HighPass = Own(box, crossed, Filter.HighPass),
            LowPass = Own(box, crossed, Filter.LowPass),
            Aim = Aim(stack, box),
        };
        return new DrivenBox(
            box.Piece.Address, stack, box, path, wiring.Into(input).FirstOrDefault(), [.. wiring.OutOf(new Port(box.Piece.Name, PortKind.Link, Number: null))], output, set, crossed)
        {
            RearDelay = later,
            QuarterWave = settings.QuarterWaveOf(box),
        };
    }

    private (Figure<Duration> Delay, string From) Delay(StackPlan stack, Figure<Duration>? later, DriveOutput? output)
    {
        var front = $"front of {stack.Name}";
        if (output?.Delayed is DelayedHere.Stack or DelayedHere.AsWritten)
        {
            return later is null ? (DriveSettings.Neutral.Delay, "") : (later, front);
        }

        if (output?.Delayed == DelayedHere.StackAndRear)
        {
            return (DriveSettings.Neutral.Delay, "");
        }

        var timing = timings.Of(stack);
        return later is null ? (timing.Delay, timing.From) : (OutputSettings.Plus(timing.Delay, later), timing.From.Length > 0 ? timing.From : front);
    }

    private static Setting<Polarity> Polarity(StackedBox box, DriveOutput? output)
    {
        var isLeft = box.IsRearFacing && output?.Set.Polarity.Value != Domain.Gigs.Polarity.Reversed;
        return new Setting<Polarity>(isLeft ? Domain.Gigs.Polarity.Reversed : Domain.Gigs.Polarity.Normal, Reason.Derived.It, Doubts.None);
    }

    private static Figure<Frequency>? Own(StackedBox box, IReadOnlyList<Crossing> crossed, Filter filter) =>
        crossed.Count > 0 && crossed[^1] is var last && last.By == box.Piece.Item && last.Filter == filter && IsOwn(box, last) ? last.At : null;

    // The last crossing is the box's own unless it came over a link from a box of the same item.
    private static bool IsOwn(StackedBox box, Crossing last) => (last.Filter == Filter.LowPass) == box.IsSub;

    // Both boxes of a pair get the same number: one of them stands on its head, so that they throw symmetrically.
    private static Figure<Angle>? Aim(StackPlan stack, StackedBox box)
    {
        if (box.Piece.Kind?.Loudspeaker?.AimRange is null)
        {
            return null;
        }

        return stack.Stack.ElectronicAim is { } given ? Figure.From(given) : new Figure<Angle>(Angle.Zero, Doubts.None, Reason.Derived.It);
    }
}
