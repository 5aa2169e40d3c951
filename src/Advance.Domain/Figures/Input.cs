using Advance.Domain.Facts;

namespace Advance.Domain.Figures;

/// <summary>One value that a working was fed with.</summary>
/// <param name="Symbol">As in the formula.</param>
/// <param name="Value">A quantity, a number or a list of them; null where unknown.</param>
/// <param name="RestsOn">The open questions about it.</param>
/// <param name="Why">Where it came from.</param>
/// <param name="How">Its own working, if it was worked out.</param>
public sealed record Input(string Symbol, object? Value, Doubts RestsOn, Reason Why, Working? How)
{
    /// <summary>The workings of the terms, for a list of values.</summary>
    public IReadOnlyList<Working> Parts { get; init; } = [];
}
