namespace Advance.Handbook;

/// <summary>
/// What the North American current-carrying capacity for three loaded conductors is multiplied by where there are more in one cord or in cables
/// bundled without space. Source: <see cref="Nec.Table400A3"/>. The equipment earth is not counted; the neutral of a wye is, where most of its
/// load is non-linear.
/// </summary>
public static class MoreThanThree
{
    /// <summary>The factor: 1 to three conductors, 0.35 from 41.</summary>
    /// <param name="loaded">Conductors that carry current, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than one conductor.</exception>
    public static double Factor(int loaded)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(loaded, 1);
        return loaded switch
        {
            <= 3 => 1,
            <= 6 => 0.80,
            <= 9 => 0.70,
            <= 20 => 0.50,
            <= 30 => 0.45,
            <= 40 => 0.40,
            _ => 0.35,
        };
    }
}
