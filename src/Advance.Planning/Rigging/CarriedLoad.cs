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

    /// <summary>Whether it is known to lie along a truss of some length, m.</summary>
    public bool IsWithin(double length) => From >= 0 && From <= length && (To is null || (To > From && To <= length + 1e-9));

    /// <summary>How much of it is left of a place along the truss, as a part of 1, and how far the middle of that is from there, m.</summary>
    public (double Share, double Lever) LeftOf(double place)
    {
        var start = From!.Value;
        if (To is not { } end)
        {
            return (start < place ? 1 : 0, place - start);
        }

        var covered = Math.Clamp(place, start, end) - start;
        return (covered / (end - start), place - start - (covered / 2));
    }
}
