using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What pulls sideways at what holds something, and which way.</summary>
/// <param name="Pull">At rest.</param>
/// <param name="TowardsX">Which way, to stage left, as a part of 1.</param>
/// <param name="TowardsY">And upstage.</param>
public readonly record struct SidewaysPull(Figure<Mass> Pull, double TowardsX, double TowardsY);
