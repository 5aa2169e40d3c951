namespace Advance.Handbook;

/// <summary>
/// What the loads on a stretch do at its right end when nothing holds it but a clamp at its left: shear and moment there, and the integrals that
/// turning and sinking need. Forces count downward, moments sagging, as seen from the left.
/// </summary>
/// <param name="Shear">−Σ P, N.</param>
/// <param name="Moment">m₀(l), N m.</param>
/// <param name="Sliding">∫ v₀ dx, N m: the moment but for couples.</param>
/// <param name="Turning">∫ m₀ dx, N m².</param>
/// <param name="Sinking">∫ (l − x) m₀ dx, N m³.</param>
internal readonly record struct LoadIntegrals(double Shear, double Moment, double Sliding, double Turning, double Sinking)
{
    /// <summary>Of the loads between two places.</summary>
    /// <param name="loads">All loads of the beam.</param>
    /// <param name="from">Left end of the stretch, m; what stands on it counts.</param>
    /// <param name="to">Right end, m; a point load on it does not count.</param>
    public static LoadIntegrals Of(IReadOnlyList<BeamLoad> loads, double from, double to)
    {
        var sum = default(LoadIntegrals);
        foreach (var load in loads)
        {
            sum = sum.Plus(load.IsSpread ? Spread(load.PerMetre, to - Math.Max(load.From, from), to - Math.Min(load.To, to)) : Pointed(load, from, to));
        }

        return sum;
    }

    private static LoadIntegrals Pointed(BeamLoad load, double from, double to)
    {
        var arm = to - load.From;
        return load.From < from || arm <= 0
            ? default
            : new(
                -load.Force,
                load.Couple - (load.Force * arm),
                -load.Force * arm,
                (load.Couple * arm) - (load.Force * arm * arm / 2),
                (load.Couple * arm * arm / 2) - (load.Force * arm * arm * arm / 6));
    }

    // Between two arms, measured from the right end; the longer comes first.
    private static LoadIntegrals Spread(double perMetre, double far, double near) => far <= near
        ? default
        : new(
            -perMetre * (far - near),
            -perMetre * (Power(far, 2) - Power(near, 2)) / 2,
            -perMetre * (Power(far, 2) - Power(near, 2)) / 2,
            -perMetre * (Power(far, 3) - Power(near, 3)) / 6,
            -perMetre * (Power(far, 4) - Power(near, 4)) / 24);

    private static double Power(double value, int exponent) => exponent switch { 2 => value * value, 3 => value * value * value, _ => value * value * value * value };

    private LoadIntegrals Plus(LoadIntegrals other) =>
        new(Shear + other.Shear, Moment + other.Moment, Sliding + other.Sliding, Turning + other.Turning, Sinking + other.Sinking);
}
