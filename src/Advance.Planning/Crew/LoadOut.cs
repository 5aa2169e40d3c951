using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Getting it all out again.</summary>
/// <param name="Start">When it can start.</param>
/// <param name="Length">How long it takes with all who are called; unknown where nobody is, or some work is.</param>
/// <param name="At">Where the start was written.</param>
/// <param name="RestsOn">The open questions behind it.</param>
public sealed record LoadOut(Moment Start, Figure<Duration> Length, Mark At, Doubts RestsOn)
{
    /// <summary>When it is done; null where that cannot be known.</summary>
    public Moment? End => Length.Value is { } length ? Start.Plus((int)Math.Ceiling(length.Minutes - 1e-9)) : null;
}
