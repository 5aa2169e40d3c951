using UnitsNet;

namespace Advance.Domain.Facts;

/// <summary>When something starts and how long it takes: <c>20:00 for 45 min</c>.</summary>
/// <param name="Start">When it starts.</param>
/// <param name="Length">How long, more than 0.</param>
public readonly record struct SetTime(Moment Start, Duration Length)
{
    /// <summary>When it ends, to the full minute.</summary>
    public Moment End => Start.Plus((int)Math.Round(Length.Minutes, MidpointRounding.AwayFromZero));
}
