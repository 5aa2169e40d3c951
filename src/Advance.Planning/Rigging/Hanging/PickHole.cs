using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A hole of a flying frame that a hoist may pick it up by, seen from its front pin along the frame's own axes.</summary>
/// <param name="Forward">m towards the audience; negative behind the pin.</param>
/// <param name="Up">m above the pin.</param>
public sealed record PickHole(double Forward, double Up)
{
    /// <summary>A hole of a frame as its maker tells it.</summary>
    /// <exception cref="InvalidOperationException">Nobody knows where it is.</exception>
    public static PickHole Of(FrameHole hole) => new(-hole.Behind.Value.Meters, hole.Above.Value.Meters);
}
