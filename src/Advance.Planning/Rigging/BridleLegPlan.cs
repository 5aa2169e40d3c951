using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A leg of a bridle.</summary>
/// <param name="Point">The venue's point that it goes to.</param>
/// <param name="Length">From apex to point, m.</param>
/// <param name="FromHorizontal">Degrees; 90 hangs straight.</param>
/// <param name="TowardsX">Which way it pulls its point, to stage left, as a part of 1.</param>
/// <param name="TowardsY">And upstage.</param>
/// <param name="Pull">In it, while it moves.</param>
/// <param name="Down">On its point, straight down, at rest.</param>
/// <param name="Sideways">On its point, at rest.</param>
/// <param name="IsSlack">Whether it would have to push.</param>
public sealed record BridleLegPlan(
    string Point, double Length, double FromHorizontal, double TowardsX, double TowardsY, Figure<Mass> Pull, Figure<Mass> Down, Figure<Mass> Sideways, bool IsSlack);
