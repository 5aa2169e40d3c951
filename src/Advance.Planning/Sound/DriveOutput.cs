using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>One output of a processor, and what is set on it.</summary>
/// <param name="Address">Its name in the plan: <c>sound/DRIVE/out/1</c>.</param>
/// <param name="Port">The output.</param>
/// <param name="Device">The processor.</param>
/// <param name="From">The inputs it is made from.</param>
/// <param name="Feeds">The boxes that hang on it, in the order of the signal.</param>
/// <param name="Set">What is set.</param>
/// <param name="Delayed">How much of what its boxes want it delays itself.</param>
/// <param name="Row">What somebody wrote for it; null where nothing.</param>
public sealed record DriveOutput(
    Address Address,
    Port Port,
    SoundDevice Device,
    IReadOnlyList<Port> From,
    IReadOnlyList<(StackPlan Stack, StackedBox Box)> Feeds,
    DriveSettings Set,
    DelayedHere Delayed,
    OutputRow? Row)
{
    /// <summary>The stacks that hang on it, each once.</summary>
    public IEnumerable<StackPlan> Stacks => Feeds.Select(fed => fed.Stack).DistinctBy(stack => stack.Address);

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Address / "delay", $"{Port}, delay", Set.Delay),
        .. Set.DelayWay is { } way ? [Stated.Of(Address / "delay-way", $"{Port}, delay as a way", way)] : Array.Empty<Stated>(),
        .. Set.HighPass is { } high ? [Stated.Of(Address / "high-pass", $"{Port}, high-pass", high)] : Array.Empty<Stated>(),
        .. Set.LowPass is { } low ? [Stated.Of(Address / "low-pass", $"{Port}, low-pass", low)] : Array.Empty<Stated>(),
    ];
}
