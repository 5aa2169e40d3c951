using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>A row of a maker's table for a flying frame.</summary>
/// <param name="Boxes">So many boxes or fewer, 1 and more.</param>
/// <param name="From">The least tilt, nose down positive.</param>
/// <param name="To">The most tilt, nose down positive.</param>
public sealed record FrameLimit(int Boxes, Angle From, Angle To)
{
    /// <summary>The kind of box that the row is for; empty for any.</summary>
    public string Box { get; init; } = "";
}
