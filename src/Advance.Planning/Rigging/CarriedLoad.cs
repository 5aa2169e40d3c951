using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Something that a truss carries.</summary>
/// <param name="What">In words.</param>
/// <param name="Weight">With the margin of how it is known.</param>
/// <param name="How">How its weight is known; null for a sum of several, and where nobody knows it.</param>
/// <param name="From">Where along the truss it is, or begins, in metres; null where nobody knows.</param>
/// <param name="To">Where a spread load ends; null for one in one place.</param>
/// <param name="Offset">From the centre line, in metres.</param>
public sealed record CarriedLoad(string What, Figure<Mass> Weight, Known? How, double? From, double? To, double Offset)
{
    /// <summary>The open questions about where it is.</summary>
    public Doubts Where { get; init; } = Doubts.None;

    /// <summary>Where its weight acts; null where nobody knows.</summary>
    public double? Middle => To is { } end && From is { } start ? (start + end) / 2 : From;
}
