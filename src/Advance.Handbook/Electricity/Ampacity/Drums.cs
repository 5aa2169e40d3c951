namespace Advance.Handbook;

/// <summary>
/// What the tabulated current-carrying capacity of flexible cable is multiplied by where it stays on its drum, or lies coiled as if on one.
/// Source: <see cref="Bs7671.Drums"/>.
/// </summary>
public static class Drums
{
    /// <summary>On a radial drum, one turn above the other.</summary>
    /// <param name="isVentilated">Whether air comes through it.</param>
    public static double Radial(bool isVentilated) => isVentilated ? 0.85 : 0.75;

    /// <summary>On a ventilated cylindrical drum; null for more layers than the note has.</summary>
    /// <param name="layers">Of cable above each other, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than one layer.</exception>
    public static double? Cylindrical(int layers)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(layers, 1);
        return layers switch
        {
            1 => 0.85,
            2 => 0.65,
            3 => 0.45,
            4 => 0.35,
            _ => null,
        };
    }
}
