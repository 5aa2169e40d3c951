using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>What things stand on that do not stand on a stage.</summary>
/// <param name="Surface">In words; empty where not said.</param>
/// <param name="Friction">Between a foot and it, wet; unknown where nobody says.</param>
/// <param name="Slope">How much it falls; unknown where nobody says.</param>
/// <param name="Falls">The edge of the stage that it falls towards; null where nobody says, and then any.</param>
/// <param name="Bearing">What it bears; unknown where nobody says.</param>
/// <param name="IsSoft">Whether it is soft, or gets so in rain.</param>
/// <param name="At">Where it was written.</param>
public sealed record SiteGround(
    string Surface, Given<double> Friction, Given<Angle> Slope, Given<StageEdges>? Falls, Given<Pressure> Bearing, bool IsSoft, Mark At);
