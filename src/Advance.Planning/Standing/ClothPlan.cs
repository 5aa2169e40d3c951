using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A cloth, a banner or a screen that hangs in the open, and what the wind does to it.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="What">As written.</param>
/// <param name="On">The truss that it hangs on.</param>
/// <param name="At">Where it was written.</param>
/// <param name="Gust">At its truss; unknown where nobody says.</param>
/// <param name="Push">Sideways, of the most wind that it hangs in, which its truss passes on to its points.</param>
/// <param name="Swing">How far it swings out in that, where it hangs free.</param>
/// <param name="Pull">What it pulls its truss with, along itself.</param>
/// <param name="Limit">The gust that it must be down before: as written, else the one that swings it out as far as the company allows.</param>
public sealed record ClothPlan(
    Address Address, string What, string On, Mark At, Figure<Speed> Gust, Figure<Force> Push, Figure<Angle> Swing, Figure<Force> Pull, Figure<Speed> Limit)
{
    /// <summary>Make ready.</summary>
    public required Figure<Speed> Prepare { get; init; }

    /// <summary>Take it down.</summary>
    public required Figure<Speed> Act { get; init; }

    /// <summary>The mean of a forecast in which that limit is to be reckoned with.</summary>
    public required Figure<Speed> Forecast { get; init; }

    /// <summary>What is written of taking it down; null where nothing is.</summary>
    public LoweredRow? Lowered { get; init; }

    /// <summary>Its numbers.</summary>
    public IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "push", $"{What} on {On}, wind on it", Push),
        Stated.Of(Address / "swing", $"{What} on {On}, swings out", Swing),
        Stated.Of(Address / "pull", $"{What} on {On}, pulls its truss", Pull),
        Stated.Of(Address / "limit", $"{What} on {On}, gust that it must be down before", Limit),
        Stated.Of(Address / "prepare", $"{What} on {On}, gust to make ready at", Prepare),
        Stated.Of(Address / "act", $"{What} on {On}, gust to take it down at", Act),
        Stated.Of(Address / "forecast", $"{What} on {On}, mean of a forecast for that gust", Forecast),
    ];
}
