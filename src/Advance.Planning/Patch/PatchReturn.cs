using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>One output that somebody on stage hears, or half of a stereo one.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Number">The mix, as on the desk.</param>
/// <param name="Act">Whose it is.</param>
/// <param name="Row">As written; both halves of a stereo mix share it.</param>
/// <param name="Spot">Where it is heard; null where not known.</param>
/// <param name="Port">The port it comes out of; null where none was left.</param>
/// <param name="Why">Whether the port is one that was fixed by hand.</param>
public sealed record PatchReturn(Address Address, int Number, string Act, MixRow Row, Spot? Spot, Port? Port, Reason Why)
{
    /// <summary>What it is heard with, in order; both halves of a stereo mix share it; empty where that is not known.</summary>
    public IReadOnlyList<Piece> Heard { get; init; } = [];

    /// <summary>Which half of a stereo mix it is, from 0; 0 for a mono one.</summary>
    public int Half => Number - Row.Numbers.First;

    /// <summary>The open questions about it.</summary>
    public Doubts RestsOn => Doubts.Of(Row.With?.Doubt).With(Doubts.Of(Row.From?.Doubt)).With(Doubts.Of(Row.Place?.Doubt)).With(Doubts.Of(Row.Port?.Doubt));
}
