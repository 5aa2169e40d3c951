using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out what is set on each output of a processor that something hangs on. What somebody wrote is obeyed.</summary>
/// <param name="wiring">What hangs on what.</param>
/// <param name="timings">How stacks are timed.</param>
/// <param name="speed">Of sound.</param>
/// <param name="policies">Whether outputs start muted.</param>
internal sealed class OutputSettings(Wiring wiring, Timings timings, Figure<Speed> speed, Policies policies)
{
    /// <summary>The outputs of one processor, in order.</summary>
    public IEnumerable<DriveOutput> Of(SoundDevice device) => wiring.UsedOutputs(device.Name).Select(port => Of(device, port));

    /// <summary>By how much a rear-facing box must be later than the front: sound takes that long past a box. Null for any other.</summary>
    public Figure<Duration>? RearDelay(StackedBox box)
    {
        if (!box.IsRearFacing)
        {
            return null;
        }

        return Sum.Of("later than the front", "τ = d / c", Acoustics.Subs).Put("d", DepthOf(box)).Put("c", speed).Gives(SubDelays.Gradient);
    }

    /// <summary>The frequency that a rear-facing box cancels best behind the stack: its depth is a quarter of that wave. Null for any other.</summary>
    public Figure<Frequency>? QuarterWaveOf(StackedBox box) => box.IsRearFacing
        ? Sum.Of("quarter wave", "f = c / (4 · d)", Acoustics.Travel).Put("c", speed).Put("d", DepthOf(box)).Gives((c, depth) => QuarterWave.FrequencyOf(depth, c))
        : null;

    // A box without depth is one whose size nobody wrote right.
    private static Figure<Length> DepthOf(StackedBox box) => box.Piece.Kind?.Size is { } given && (!given.IsKnown || given.Value.Depth.Meters > 0)
        ? Figure.From(given.Select(size => size.Depth))
        : new Figure<Length>(null, Doubts.None, Reason.Derived.It);

    /// <summary>Whether something can delay; what no stock describes is not judged here.</summary>
    public static bool CanDelay(Kind? kind) => kind is null || kind.Loudspeaker?.DelayRange is not null;

    private DriveOutput Of(SoundDevice device, Port port)
    {
        var feeds = wiring.Reached(port);
        var row = device.Device.Outputs.FirstOrDefault(row => port.Number >= row.Numbers.First && port.Number <= row.Numbers.Last);
        var isRear = feeds.Count > 0 && feeds.All(fed => fed.Box.IsRearFacing);
        var (delay, from, delayed) = Delay(device, feeds, row, isRear);
        var settings = new DriveSettings(Polarity(row, isRear), Gain(row), delay, from)
        {
            DelayWay = WayOf(delay),
            HighPass = Crossed(device, feeds, row?.HighPass, ofSubs: false),
            LowPass = Crossed(device, feeds, row?.LowPass, ofSubs: true),
            StartsMuted = new Setting<bool>(policies.StartMuted, new Reason.Policy("start-muted"), Doubts.None),
        };
        return new DriveOutput(Address.Of("sound") / device.Name / "out" / (port.Number ?? 1), port, device, wiring.Sources(port), feeds, settings, delayed, row);
    }

    private Figure<Length>? WayOf(Figure<Duration> delay) => delay.Value is { Seconds: 0 } && !delay.RestsOn.Any
        ? null
        : Sum.Of("way of the delay", "d = t · c", Acoustics.Travel).Put("t", delay).Put("c", speed)
            .Gives((time, c) => Length.FromMeters(time.Seconds * c.MetersPerSecond));

    private static Setting<Polarity> Polarity(OutputRow? row, bool isRear)
    {
        var derived = isRear ? Domain.Gigs.Polarity.Reversed : Domain.Gigs.Polarity.Normal;
        return row?.Polarity is { } given
            ? new(given.Or(derived), new Reason.Fixed(given.At), Doubts.Of(given.Doubt))
            : new(derived, Reason.Derived.It, Doubts.None);
    }

    private static Figure<Level> Gain(OutputRow? row) => row?.Gain is { } given ? Figure.From(given) : DriveSettings.Neutral.Gain;

    private (Figure<Duration> Delay, string From, DelayedHere Delayed) Delay(
        SoundDevice device, IReadOnlyList<(StackPlan Stack, StackedBox Box)> feeds, OutputRow? row, bool isRear)
    {
        if (row?.Delay is { } given)
        {
            return (Figure.From(given), "fixed by hand", DelayedHere.AsWritten);
        }

        var stacks = feeds.Select(fed => fed.Stack).DistinctBy(stack => stack.Address).Select(timings.Of).ToList();
        if (stacks.Count == 0 || !CanDelay(device.Kind) || !AreAlike(stacks))
        {
            return (DriveSettings.Neutral.Delay, "", DelayedHere.Nothing);
        }

        var later = isRear ? RearDelay(feeds[0].Box) : null;
        return later is null
            ? (stacks[0].Delay, stacks[0].From, DelayedHere.Stack)
            : (Plus(stacks[0].Delay, later), $"front of {feeds[0].Stack.Name}", DelayedHere.StackAndRear);
    }

    // Stacks whose ways are unknown are not known to want the same.
    private static bool AreAlike(List<Timing> timings) => timings.Count == 1
        || timings.TrueForAll(other => other.Delay.Value?.Seconds is { } seconds && seconds.Equals(timings[0].Delay.Value?.Seconds));

    /// <summary>A delay upon a delay.</summary>
    public static Figure<Duration> Plus(Figure<Duration> stack, Figure<Duration> later) => stack.Value is { Seconds: 0 } && !stack.RestsOn.Any
        ? later
        : Sum.Of("delay", "t = t₁ + t₂", Publication.Arithmetic).Put("t₁", stack).Put("t₂", later).Gives((one, other) => one + other);

    // Where the gig crosses in this processor, what drives only subs is low-passed there and what drives only tops high-passed.
    private static Figure<Frequency>? Crossed(
        SoundDevice device, IReadOnlyList<(StackPlan Stack, StackedBox Box)> feeds, Given<Frequency>? written, bool ofSubs)
    {
        if (written is { } given)
        {
            return Figure.From(given);
        }

        var crossed = feeds.Select(fed => fed.Stack.Stack.Crossover).OfType<Given<Crossover>>().FirstOrDefault(given => given.Is(out var known) && known.Within == device.Name);
        return crossed.IsKnown && feeds.All(fed => fed.Box.IsSub == ofSubs) ? Figure.From(crossed.Select(crossover => crossover.Frequency)) : null;
    }
}
