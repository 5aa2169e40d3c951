using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A beam of the roof with all that hangs on it, ours and that of others, at rest.</summary>
/// <param name="Beam">The venue's.</param>
/// <param name="Moment">The largest.</param>
/// <param name="MomentAllowed">By its engineer, or from the load that its middle may carry.</param>
/// <param name="Shear">The larger of its end reactions.</param>
/// <param name="ShearAllowed">By its engineer; unknown where nobody says.</param>
public sealed record BeamPlan(RoofBeam Beam, Figure<Torque> Moment, Figure<Torque> MomentAllowed, Figure<Force> Shear, Figure<Force> ShearAllowed)
{
    /// <summary>All that hangs on it.</summary>
    public required Figure<Mass> All { get; init; }

    /// <summary>How far along it each point is that is used, ours and those of others, rising; null where nobody knows of one.</summary>
    public required IReadOnlyList<double>? Along { get; init; }

    /// <summary>How many points on it are used, ours and those of others.</summary>
    public required int Used { get; init; }

    /// <summary>Where the first thing on it was asked for.</summary>
    public required Mark At { get; init; }

    /// <summary>Its name in the plan.</summary>
    public Address Address => Address.Of("rigging") / "beam" / Beam.Name;

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "all", $"{Beam.Name}, all that hangs on it", All),
        Stated.Of(Address / "moment", $"{Beam.Name}, moment", Moment),
        Stated.Of(Address / "moment-allowed", $"{Beam.Name}, moment allowed", MomentAllowed),
        Stated.Of(Address / "shear", $"{Beam.Name}, end reaction", Shear),
    ];
}
