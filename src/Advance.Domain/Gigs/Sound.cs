namespace Advance.Domain.Gigs;

/// <summary>The sound system as written.</summary>
/// <param name="Consoles">Desks.</param>
/// <param name="StageBoxes">Boxes that carry lines to a desk.</param>
/// <param name="Processors">What drives the loudspeakers.</param>
/// <param name="Stacks">Loudspeakers from the floor up.</param>
/// <param name="AlwaysLive">Lines that are up for every act.</param>
public sealed record Sound(
    IReadOnlyList<Device> Consoles,
    IReadOnlyList<Device> StageBoxes,
    IReadOnlyList<Device> Processors,
    IReadOnlyList<Stack> Stacks,
    IReadOnlyList<InputRow> AlwaysLive)
{
    /// <summary>No sound system.</summary>
    public static readonly Sound None = new([], [], [], [], []);

    /// <summary>What drives passive boxes.</summary>
    public IReadOnlyList<Device> Amplifiers { get; init; } = [];

    /// <summary>Loudspeakers flown under a frame.</summary>
    public IReadOnlyList<Stack> Hangs { get; init; } = [];

    /// <summary>Every stack and every hang, in this order.</summary>
    public IEnumerable<Stack> Piles => [.. Stacks, .. Hangs];

    /// <summary>Every desk, stage box, processor and amplifier, in this order.</summary>
    public IEnumerable<Device> Devices => [.. Consoles, .. StageBoxes, .. Processors, .. Amplifiers];
}
