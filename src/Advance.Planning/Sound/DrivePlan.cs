using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How the signal gets to every box, and what is set where.</summary>
/// <param name="Links">From box to box, and from outputs that were chosen to the first box. Those that the gig names are in the sound plan.</param>
/// <param name="Figures">Delays and what else is worked out.</param>
/// <param name="Chosen">Outputs, and addresses on the network.</param>
public sealed record DrivePlan(IReadOnlyList<Link> Links, IReadOnlyList<Stated> Figures, Choices Chosen)
{
    /// <summary>Outputs of processors that something hangs on, processor by processor.</summary>
    public IReadOnlyList<DriveOutput> Outputs { get; init; } = [];

    /// <summary>Every loudspeaker of every stack, from the floor up.</summary>
    public IReadOnlyList<DrivenBox> Boxes { get; init; } = [];

    /// <summary>The way back to the desk from each processor and amplifier, by its name.</summary>
    public IReadOnlyList<SignalPath> DevicePaths { get; init; } = [];

    /// <summary>Channels of amplifiers and the boxes on them.</summary>
    public IReadOnlyList<AmplifierLoad> Loads { get; init; } = [];

    /// <summary>Units with a control port or with software.</summary>
    public IReadOnlyList<NetworkUnit> Units { get; init; } = [];

    /// <summary>The timing of each stack, by its address.</summary>
    public IReadOnlyDictionary<Address, Timing> Timings { get; init; } = new Dictionary<Address, Timing>();

    /// <summary>The speed of sound on the night.</summary>
    public Figure<Speed> SpeedOfSound { get; init; } = new(null, Domain.Facts.Doubts.None, Reason.Derived.It);

    /// <summary>A box by the address of its piece; null for what is no loudspeaker.</summary>
    public DrivenBox? Of(Address piece) => Boxes.FirstOrDefault(box => box.Address == piece);

    /// <summary>What is set on an output of a processor; null where nothing hangs on it.</summary>
    public DriveOutput? Of(Port output) => Outputs.FirstOrDefault(driven => driven.Port == output);
}
