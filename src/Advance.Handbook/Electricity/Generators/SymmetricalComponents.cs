using System.Numerics;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Three line phasors as three balanced systems: turning forward, turning backward, and all alike. Source: <see cref="CircuitTheory.Sequences"/>.
/// </summary>
/// <param name="Positive">Turns as the supply does; it does the work.</param>
/// <param name="Negative">Turns the other way; it heats the rotor.</param>
/// <param name="Zero">A third of what the neutral carries.</param>
public readonly record struct SymmetricalComponents(Complex Positive, Complex Negative, Complex Zero)
{
    private static readonly Complex Turn = Complex.FromPolarCoordinates(1, 2 * Math.PI / 3);

    /// <summary>How unbalanced: <c>u = |I₂| / |I₁|</c>; null where nothing turns forward, as with no current at all.</summary>
    public Ratio? Unbalance => Positive.Magnitude > 0 ? Ratio.FromDecimalFractions(Negative.Magnitude / Positive.Magnitude) : null;

    /// <summary>
    /// From the currents (or voltages) of L1, L2 and L3, L2 a third of a turn behind L1:
    /// <c>I₁ = (a + α · b + α² · c) / 3</c>, <c>I₂ = (a + α² · b + α · c) / 3</c>, <c>I₀ = (a + b + c) / 3</c> with α a third of a turn.
    /// </summary>
    /// <param name="a">Phasor of L1.</param>
    /// <param name="b">Phasor of L2.</param>
    /// <param name="c">Phasor of L3.</param>
    public static SymmetricalComponents Of(Complex a, Complex b, Complex c)
    {
        var back = Complex.Conjugate(Turn);
        return new((a + (Turn * b) + (back * c)) / 3, (a + (back * b) + (Turn * c)) / 3, (a + b + c) / 3);
    }
}
