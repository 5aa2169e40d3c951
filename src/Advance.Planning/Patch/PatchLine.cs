using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>One channel of an input list, patched.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Channel">As on the desk.</param>
/// <param name="Source">What is heard.</param>
/// <param name="Act">Whose it is; null for a line that is up for every act.</param>
/// <param name="Row">As written; rows of several channels are shared.</param>
/// <param name="Device">Its microphone or DI; null where it needs none.</param>
/// <param name="Spot">Where it stands; null where not known.</param>
/// <param name="Port">The port it is patched to; null where none was left.</param>
/// <param name="Why">Whether the port is one that was fixed by hand.</param>
public sealed record PatchLine(
    Address Address, int Channel, string Source, string? Act, InputRow Row, Piece? Device, Spot? Spot, Port? Port, Reason Why)
{
    /// <summary>Its microphones or DIs, and its stands, without what comes with them.</summary>
    public IReadOnlyList<Piece> Kit { get; init; } = [];

    /// <summary>Whether 48 V is switched on for it; unknown where nobody knows what is plugged in, or whether that needs it.</summary>
    public Figure<bool> Phantom { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>Whether the next channel belongs to it: a pair, or a group patched together.</summary>
    public bool JoinsNext => Channel < Row.Channels.Last;

    /// <summary>The open questions about it.</summary>
    public Doubts RestsOn =>
        Doubts.Of(Row.Device?.Doubt).With(Doubts.Of(Row.From?.Doubt)).With(Doubts.Of(Row.Place?.Doubt)).With(Doubts.Of(Row.Port?.Doubt));
}
