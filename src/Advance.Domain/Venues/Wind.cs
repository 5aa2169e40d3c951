using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>The wind that things stand up to, and who acts on it. A venue says what holds on its site, a gig what holds for it alone.</summary>
/// <param name="Gust">The gust, of 3 s, up to which everything stands as it is; null where nobody says.</param>
/// <param name="Height">Above the ground at which that gust is; null where nobody says.</param>
/// <param name="Terrain">What the wind comes over; null where nobody says.</param>
/// <param name="MeasuredBy">Who reads the meter; null where nobody says.</param>
/// <param name="Meter">Where the anemometer is; null where nobody says.</param>
/// <param name="DecidedBy">Who says that things come down; null where nobody says.</param>
/// <param name="Lowered">What comes down in wind, in the order written.</param>
/// <param name="At">Where it was written.</param>
public sealed record Wind(
    Given<Speed>? Gust,
    Given<Length>? Height,
    Given<Terrain>? Terrain,
    Given<string>? MeasuredBy,
    Given<string>? Meter,
    Given<string>? DecidedBy,
    IReadOnlyList<LoweredRow> Lowered,
    Mark At)
{
    /// <summary>What this one says, and where it says nothing, what the other does.</summary>
    public Wind Over(Wind? other) => other is null ? this : new Wind(
        Gust ?? other.Gust,
        Height ?? other.Height,
        Terrain ?? other.Terrain,
        MeasuredBy ?? other.MeasuredBy,
        Meter ?? other.Meter,
        DecidedBy ?? other.DecidedBy,
        [.. Lowered, .. other.Lowered],
        At);
}
