using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What pulls sideways at what holds something, and which way.</summary>
/// <param name="Pull">At rest.</param>
/// <param name="TowardsX">Which way, to stage left, as a part of 1.</param>
/// <param name="TowardsY">And upstage.</param>
public readonly record struct SidewaysPull(Figure<Mass> Pull, double TowardsX, double TowardsY)
{
    /// <summary>Which way something goes, in degrees clockwise from upstage, 0 to 360.</summary>
    /// <param name="x">To stage left.</param>
    /// <param name="y">Upstage.</param>
    public static double Bearing(double x, double y) => ((Math.Atan2(x, y) * 180 / Math.PI) + 360) % 360;
}
