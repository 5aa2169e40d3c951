namespace Advance.Handbook;

/// <summary>Which share of its straight rating a sling keeps by the way it is laid. Source: <see cref="RiggingStandards.AsmeB309"/> and <see cref="RiggingStandards.En1492"/>.</summary>
public static class Hitches
{
    /// <summary>Straight.</summary>
    public const double Straight = 1;

    /// <summary>Choked, at an angle of choke of 120° or more.</summary>
    public const double Choke = 0.8;

    /// <summary>Choked at an angle: 0.8, and again 0.87 below 120°, 0.74 below 90°, 0.62 below 60°, 0.49 below 30°.</summary>
    /// <param name="angle">Angle of choke, degrees, 0 to 180; the straight pull is 180.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is none of these.</exception>
    public static double ChokeAt(double angle)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(angle);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(angle, 180);
        return Choke * angle switch { >= 120 => 1, >= 90 => 0.87, >= 60 => 0.74, >= 30 => 0.62, _ => 0.49 };
    }

    /// <summary>In a basket by the classes of EN: 2.0 with parallel legs, 1.4 to 45°, 1.0 to 60°; null beyond, where it is not to be used.</summary>
    /// <param name="fromVertical">Degrees from the vertical, 0 or more: EN counts from there.</param>
    public static double? Basket(double fromVertical) => fromVertical switch { 0 => 2, > 0 and <= 45 => 1.4, > 45 and <= 60 => 1, _ => null };

    /// <summary>In a basket as North America counts: <c>2 sin α</c>; null below 30°, where it is not to be used.</summary>
    /// <param name="fromHorizontal">α, degrees from the horizontal, to 90.</param>
    public static double? BasketFromHorizontal(double fromHorizontal) => fromHorizontal is >= 30 and <= 90 ? 2 * SlingAngles.Reduction(fromHorizontal) : null;

    /// <summary>Three or four legs by the classes of EN: 2.1 to 45°, 1.5 to 60° of one leg's rating; null beyond.</summary>
    /// <param name="fromVertical">Degrees from the vertical, 0 or more.</param>
    public static double? ThreeOrFourLegs(double fromVertical) => fromVertical switch { >= 0 and <= 45 => 2.1, > 45 and <= 60 => 1.5, _ => null };
}
