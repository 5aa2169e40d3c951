namespace Advance.Handbook;

/// <summary>
/// What the tabulated current-carrying capacity is multiplied by where circuits or multicore cables lie together, touching, alike and equally
/// loaded. Source: <see cref="Bs7671.Table4C1"/>. Not for the North American tables: see <see cref="MoreThanThree"/>.
/// </summary>
public static class Grouping
{
    /// <summary>Up to this share of its grouped capacity a cable may be left out of the count. Source: <see cref="Bs7671.LightlyLoaded"/>.</summary>
    public const double LightlyLoaded = 0.3;

    // Circuits; bunched; single layer on a wall or floor.
    private static readonly (int Circuits, double Bunched, double OneLayer)[] Rows =
    [
        (1, 1, 1),
        (2, 0.80, 0.85),
        (3, 0.70, 0.79),
        (4, 0.65, 0.75),
        (5, 0.60, 0.73),
        (6, 0.57, 0.72),
        (7, 0.54, 0.72),
        (8, 0.52, 0.71),
        (9, 0.50, 0.70),
        (12, 0.45, 0.70),
        (16, 0.41, 0.70),
        (20, 0.38, 0.70),
    ];

    /// <summary>Bunched in air, as in a loom, or enclosed, as in a ramp; null for more than the table has. Between two rows the lower holds.</summary>
    /// <param name="circuits">Circuits or multicore cables, at least 1, without the lightly loaded.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than one circuit.</exception>
    public static double? Bunched(int circuits) => Row(circuits)?.Bunched;

    /// <summary>In a single layer on a floor or wall, touching; null for more than the table has. Two diameters apart nothing is lost.</summary>
    /// <param name="circuits">Circuits or multicore cables, at least 1, without the lightly loaded.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than one circuit.</exception>
    public static double? OneLayer(int circuits) => Row(circuits)?.OneLayer;

    private static (int Circuits, double Bunched, double OneLayer)? Row(int circuits)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(circuits, 1);
        return circuits > Rows[^1].Circuits ? null : Rows.First(row => row.Circuits >= circuits);
    }
}
