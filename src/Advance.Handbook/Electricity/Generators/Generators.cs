using UnitsNet;

namespace Advance.Handbook;

/// <summary>Generating sets. Power is kW at the engine and kVA at the alternator; what each bears is checked apart.</summary>
public static class Generators
{
    /// <summary>The power factor that sets are rated at where nothing else is said. Source: <see cref="Iso8528.Rating"/>.</summary>
    public const double RatedPowerFactor = 0.8;

    /// <summary>
    /// How many times its rated current an alternator holds into a short where its maker does not say; many with no separate excitation hold none.
    /// Whoever takes it must call it assumed. Source: <see cref="Iec60364.Generators"/>.
    /// </summary>
    public const double AssumedSustained = 3;

    /// <summary>Less than this share of the rating counts as this share in the mean. Source: <see cref="Iso8528.Mean"/>.</summary>
    public const double LeastCounted = 0.3;

    /// <summary>Rated line current of three phases: <c>I = S / (√3 · U)</c>.</summary>
    /// <param name="rated">S, VA, after derating.</param>
    /// <param name="lineToLine">U, V, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not more than 0.</exception>
    public static ElectricCurrent ThreePhaseCurrent(ElectricApparentPower rated, ElectricPotential lineToLine)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lineToLine.Volts);
        return ElectricCurrent.FromAmperes((double)rated.Voltamperes / (Math.Sqrt(3) * lineToLine.Volts));
    }

    /// <summary>Rated current between two conductors: <c>I = S / U</c>.</summary>
    /// <param name="rated">S, VA, after derating.</param>
    /// <param name="voltage">U, V, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not more than 0.</exception>
    public static ElectricCurrent SinglePhaseCurrent(ElectricApparentPower rated, ElectricPotential voltage)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(voltage.Volts);
        return ElectricCurrent.FromAmperes((double)rated.Voltamperes / voltage.Volts);
    }

    /// <summary>
    /// What is left of a rating in thin and hot air: <c>S = Sᵣ · Π k</c>. The factors are the maker's; there are none that hold for all sets.
    /// </summary>
    /// <param name="rated">At the maker's reference conditions.</param>
    /// <param name="factors">Each more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside its range.</exception>
    public static ElectricApparentPower Derated(ElectricApparentPower rated, IEnumerable<double> factors) =>
        rated * factors.Aggregate(1.0, (product, factor) => product * Checked(factor));

    /// <summary>
    /// Mean load over the hours in which it runs, as a share of its rating: <c>p = Σ pᵢ · tᵢ / Σ tᵢ</c>, with at least 0.3 for each pᵢ. Source:
    /// <see cref="Iso8528.Mean"/>. Of prime power it may be 70 % over 24 h (<see cref="Iso8528.Prime"/>).
    /// </summary>
    /// <param name="spells">Share of the rated power and how long; hours at standstill are left out.</param>
    /// <exception cref="ArgumentException">It never runs.</exception>
    public static Ratio MeanLoad(IReadOnlyCollection<(Ratio Load, Duration Time)> spells)
    {
        var hours = spells.Sum(spell => spell.Time.Hours);
        return hours > 0
            ? Ratio.FromDecimalFractions(spells.Sum(spell => Math.Max(spell.Load.DecimalFractions, LeastCounted) * spell.Time.Hours) / hours)
            : throw new ArgumentException("It never runs.", nameof(spells));
    }

    /// <summary>What is switched on at once, as a share of the rating: <c>s = ΔS / S</c>; compared with the maker's table of steps.</summary>
    /// <param name="step">ΔS, VA.</param>
    /// <param name="rated">S, VA, after derating, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rating is not more than 0.</exception>
    public static Ratio Step(ElectricApparentPower step, ElectricApparentPower rated)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero((double)rated.Voltamperes);
        return Ratio.FromDecimalFractions((double)(step.Voltamperes / rated.Voltamperes));
    }

    /// <summary>What it holds into a short at its terminals, whatever the loop: <c>I = k · Iᵣ</c>.</summary>
    /// <param name="rated">Iᵣ, rated line current, A.</param>
    /// <param name="times">k, the maker's figure, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than nothing.</exception>
    public static ElectricCurrent Sustained(ElectricCurrent rated, double times)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(times);
        return times * rated;
    }

    private static double Checked(double factor)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(factor);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(factor, 1);
        return factor;
    }
}
