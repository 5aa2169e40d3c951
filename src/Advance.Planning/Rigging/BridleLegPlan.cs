using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A leg of a bridle.</summary>
/// <param name="Placed">Where it goes, and what it is made of.</param>
/// <param name="Length">From apex to point, m.</param>
/// <param name="FromHorizontal">Degrees; 90 hangs straight.</param>
/// <param name="TowardsX">Which way it pulls its point, to stage left, as a part of 1.</param>
/// <param name="TowardsY">And upstage.</param>
/// <param name="Pull">In it, while it moves.</param>
/// <param name="Down">On its point, straight down, at rest.</param>
/// <param name="Sideways">On its point, at rest.</param>
/// <param name="IsSlack">Whether it would have to push.</param>
public sealed record BridleLegPlan(
    PlacedLeg Placed, double Length, double FromHorizontal, double TowardsX, double TowardsY, Figure<Mass> Pull, Figure<Mass> Down, Figure<Mass> Sideways, bool IsSlack)
{
    /// <summary>The venue's point that it goes to.</summary>
    public string Point => Placed.Point;

    /// <summary>Which part of what hangs on the apex goes straight down on its point; those of all legs are 1 together.</summary>
    public required Figure<double> Share { get; init; }

    /// <summary>What it weighs itself; all of it is put on its point.</summary>
    public required Figure<Mass> Own { get; init; }

    /// <summary>What it is made of, and how much of it is used.</summary>
    public IReadOnlyList<PartUse> Parts { get; init; } = [];
}
