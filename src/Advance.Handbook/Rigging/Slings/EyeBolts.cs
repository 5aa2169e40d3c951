namespace Advance.Handbook;

/// <summary>
/// Shouldered eye bolts: which share of their rating they keep when pulled at an angle. Those without a shoulder are pulled in line only.
/// Source: <see cref="RiggingStandards.EyeBolts"/>.
/// </summary>
public static class EyeBolts
{
    /// <summary>1 to 5°, 0.8 to 15°, 0.65 to 30°, 0.3 to 45°, 0.25 to 90°; between two angles the steeper one's share is not given away.</summary>
    /// <param name="fromAxis">Degrees from the bolt's axis, 0 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is none of these.</exception>
    public static double Share(double fromAxis)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fromAxis);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fromAxis, 90);
        return fromAxis switch { <= 5 => 1, <= 15 => 0.8, <= 30 => 0.65, <= 45 => 0.3, _ => 0.25 };
    }
}
