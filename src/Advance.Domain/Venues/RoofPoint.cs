using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>A place in the roof that may carry load.</summary>
/// <param name="Name">The venue's name for it.</param>
/// <param name="Place">In the venue's datum.</param>
/// <param name="Height">Of the steel above floor.</param>
/// <param name="Limit">What it may carry, straight down.</param>
/// <param name="At">Where it was written.</param>
public sealed record RoofPoint(string Name, Given<Place> Place, Given<Length> Height, Given<Mass> Limit, Mark At)
{
    /// <summary>What it may be pulled sideways; null where nobody says, and then it bears straight down alone.</summary>
    public Given<Mass>? Sideways { get; init; }

    /// <summary>Which way it may be pulled sideways, there and back, clockwise from upstage; null where that is every way.</summary>
    public Given<Angle>? Bearing { get; init; }

    /// <summary>How far off plumb it may be pulled; null where nobody says.</summary>
    public Given<Angle>? OffPlumb { get; init; }

    /// <summary>The beam it is on; null where nobody says.</summary>
    public Given<string>? Beam { get; init; }

    /// <summary>How far along that beam it is; null where nobody says.</summary>
    public Given<Length>? Along { get; init; }

    /// <summary>The bay of the roof that it is in; null where nobody says, and then it is that of its beam.</summary>
    public Given<string>? Bay { get; init; }

    /// <summary>What it is made fast with; null where nobody says.</summary>
    public Given<PointMade>? Made { get; init; }

    /// <summary>Whether its limit is for what moves, dynamic factor and all; without it the limit is for what hangs at rest.</summary>
    public bool IsForMoving { get; init; }

    /// <summary>How far it gives, per load; null where nobody says, and then it is taken as stiff.</summary>
    public Given<ForcePerLength>? Stiffness { get; init; }

    /// <summary>What it bears once, straight down, when a load catches and its hoist pulls on; null where nobody says, and then no more than its limit.</summary>
    public Given<Mass>? Snag { get; init; }

    /// <summary>Who rated it, and when; null where nobody says.</summary>
    public Given<string>? RatedBy { get; init; }
}
