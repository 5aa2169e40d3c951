using System.Collections.Immutable;
using System.Numerics;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Loads on the legs of one supply, added as phasors order by order; immutable, it grows by <c>LineToNeutral</c>, <c>LineToLine</c>,
/// <c>ThreePhase</c> and <c>Plus</c>. Source: <see cref="CircuitTheory.Phasors"/>; harmonics as in <see cref="Iec60364.AnnexE"/>.
/// </summary>
/// <remarks>
/// Where a load's displacement angle is unknown its magnitude is added in a leg; in the neutral it turns within its limits to where the sum
/// is largest. Both are upper bounds (<see cref="IsBound"/>).
/// A harmonic of order n stands at n times the angle of its voltage: the phases of harmonics are rarely known, and this lets those of third
/// order and its multiples meet in the neutral of a wye at full strength, and cancel in that of a split phase.
/// </remarks>
public sealed class PhasorSum
{
    private readonly ImmutableList<LegLoad> loads;

    private PhasorSum(LegAngles legs, ImmutableList<LegLoad> loads)
    {
        Legs = legs;
        this.loads = loads;
    }

    /// <summary>The supply's legs.</summary>
    public LegAngles Legs { get; }

    /// <summary>The loads, in the order they were added.</summary>
    public IReadOnlyList<LegLoad> Loads => loads;

    /// <summary>Whether a displacement angle is unknown, so that currents are upper bounds.</summary>
    public bool IsBound => loads.Any(load => load.Lag is null);

    /// <summary>The fundamental and the harmonics of all loads, rising.</summary>
    public IReadOnlyList<int> Orders => [1, .. loads.SelectMany(load => load.Harmonics.Orders).Distinct().Order()];

    /// <summary>In the neutral, all orders together: <c>I = √(Σ Iₙ²)</c>.</summary>
    public ElectricCurrent Neutral => RootOfSquares(NeutralOf);

    /// <summary>No load yet.</summary>
    public static PhasorSum On(LegAngles legs) => new(legs, []);

    /// <summary>With one more load between a leg and the neutral.</summary>
    /// <param name="leg">From 0.</param>
    /// <param name="rms">True root mean square.</param>
    /// <param name="lag">Displacement angle, negative where the current leads; null where unknown.</param>
    /// <param name="harmonics">Null for a sine.</param>
    /// <param name="within">How far it may lag or lead at most where the angle is unknown; null for half a turn.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such leg.</exception>
    public PhasorSum LineToNeutral(int leg, ElectricCurrent rms, Angle? lag, Spectrum? harmonics = null, Angle? within = null)
    {
        Check(leg);
        return new(Legs, loads.Add(new LegLoad(leg, Return: null, rms, lag, harmonics ?? Spectrum.Sine) { Within = within ?? Angle.FromRadians(Math.PI) }));
    }

    /// <summary>With one more load between two legs; it puts nothing on the neutral.</summary>
    /// <param name="leg">From 0.</param>
    /// <param name="other">Another leg.</param>
    /// <param name="rms">True root mean square.</param>
    /// <param name="lag">Displacement angle, negative where the current leads; null where unknown.</param>
    /// <param name="harmonics">Null for a sine.</param>
    /// <exception cref="ArgumentException">There is no such leg, or both are the same.</exception>
    public PhasorSum LineToLine(int leg, int other, ElectricCurrent rms, Angle? lag, Spectrum? harmonics = null)
    {
        Check(leg);
        Check(other);
        _ = Legs.Between(leg, other);
        return new(Legs, loads.Add(new LegLoad(leg, other, rms, lag, harmonics ?? Spectrum.Sine)));
    }

    /// <summary>With one more load on all legs and the neutral, the same on each.</summary>
    /// <param name="rms">In each line, true root mean square.</param>
    /// <param name="lag">Displacement angle, negative where the current leads; null where unknown.</param>
    /// <param name="harmonics">Null for a sine.</param>
    public PhasorSum OnEveryLeg(ElectricCurrent rms, Angle? lag, Spectrum? harmonics = null) =>
        Enumerable.Range(0, Legs.Count).Aggregate(this, (sum, leg) => sum.LineToNeutral(leg, rms, lag, harmonics));

    /// <summary>With one more balanced load on three lines that does not use the neutral.</summary>
    /// <param name="rms">In each line, true root mean square.</param>
    /// <param name="lag">Displacement angle, negative where the current leads; null where unknown.</param>
    /// <param name="harmonics">Null for a sine; multiples of the third order stay inside such a load.</param>
    /// <exception cref="ArgumentOutOfRangeException">The supply has not three legs.</exception>
    public PhasorSum ThreeWire(ElectricCurrent rms, Angle? lag, Spectrum? harmonics = null) =>
        LineToLine(0, 1, rms / Math.Sqrt(3), lag, harmonics).LineToLine(1, 2, rms / Math.Sqrt(3), lag, harmonics).LineToLine(2, 0, rms / Math.Sqrt(3), lag, harmonics);

    /// <summary>Both sums together.</summary>
    /// <exception cref="ArgumentException">They are on different supplies.</exception>
    public PhasorSum Plus(PhasorSum other) => ReferenceEquals(Legs, other.Legs)
        ? new(Legs, loads.AddRange(other.loads))
        : throw new ArgumentException("Phasors of different legs do not add.", nameof(other));

    /// <summary>Only what still runs when no other legs than these are on; a load between two legs needs both.</summary>
    public PhasorSum WithOnly(IReadOnlyCollection<int> on) =>
        new(Legs, loads.RemoveAll(load => !on.Contains(load.Leg) || (load.Return is { } other && !on.Contains(other))));

    /// <summary>In a leg, all orders together: <c>I = √(Σ Iₙ²)</c>.</summary>
    public ElectricCurrent Leg(int leg) => RootOfSquares(order => LegOf(leg, order));

    /// <summary>In a leg whatever the angles: the sum of all magnitudes.</summary>
    public ElectricCurrent LegAtMost(int leg) =>
        ElectricCurrent.FromAmperes(loads.Where(load => load.Leg == leg || load.Return == leg).Sum(load => load.Rms.Amperes));

    /// <summary>How much of a leg's current is of one order: what tables of harmonic sizing ask for; 0 where nothing flows.</summary>
    public Ratio ShareOf(int leg, int order) =>
        Leg(leg).Amperes is var whole and > 0 ? Ratio.FromDecimalFractions(LegOf(leg, order) / whole) : Ratio.Zero;

    /// <summary>In a leg, of one order, A. Orders above the first of loads to neutral and of loads between legs are taken as aligned.</summary>
    public double LegOf(int leg, int order)
    {
        var toNeutral = Sum(loads.Where(load => load.Leg == leg && load.Return is null), order);
        var between = Between(leg, order);
        var known = order == 1 ? Complex.Abs(toNeutral + between) : Complex.Abs(toNeutral) + Complex.Abs(between);
        return known + OpenSum(loads.Where(load => load.Leg == leg || load.Return == leg), order);
    }

    /// <summary>In the neutral, of one order, A.</summary>
    public double NeutralOf(int order) => order == 1 ? NeutralAtMost.Length : Complex.Abs(NeutralPhasor(order));

    /// <summary>The fundamental in the neutral, with loads of unknown angle turned to where it is largest.</summary>
    public TurnedSum NeutralAtMost => TurnedSum.Of(NeutralPhasor(1), loads.Where(load => load.Return is null && IsOpen(load, 1)).Select(Turning));

    /// <summary>The phasor in the neutral, of one order, of the loads whose angle is known.</summary>
    public Complex NeutralPhasor(int order) => Sum(loads.Where(load => load.Return is null), order);

    /// <summary>The fundamental's phasor in a leg, of the loads whose angle is known.</summary>
    public Complex LegPhasor(int leg) => Sum(loads.Where(load => load.Leg == leg && load.Return is null), 1) + Between(leg, 1);

    private Complex Between(int leg, int order) =>
        Sum(loads.Where(load => load.Leg == leg && load.Return is not null), order) - Sum(loads.Where(load => load.Return == leg), order);

    private Complex Sum(IEnumerable<LegLoad> some, int order) =>
        some.Where(load => !IsOpen(load, order)).Aggregate(Complex.Zero, (sum, load) => sum + PhasorOf(load, order));

    private static double OpenSum(IEnumerable<LegLoad> some, int order) =>
        some.Where(load => IsOpen(load, order)).Sum(load => load.Amplitude(order));

    // A harmonic's phase does not follow from the displacement angle, so an unknown angle concerns the fundamental only.
    private static bool IsOpen(LegLoad load, int order) => order == 1 && load.Lag is null;

    private TurningPhasor Turning(LegLoad load) => new(load.Amplitude(1), Legs.ToNeutral(load.Leg).Phase, load.Within.Radians);

    private Complex PhasorOf(LegLoad load, int order)
    {
        var voltage = load.Return is { } other ? Legs.Between(load.Leg, other, order) : Legs.ToNeutral(load.Leg, order);
        var lag = order == 1 ? load.Lag?.Radians ?? 0 : 0;
        return load.Amplitude(order) * voltage * Complex.FromPolarCoordinates(1, -lag);
    }

    private ElectricCurrent RootOfSquares(Func<int, double> amperes) =>
        ElectricCurrent.FromAmperes(Math.Sqrt(Orders.Sum(order => amperes(order) * amperes(order))));

    private void Check(int leg)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(leg);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(leg, Legs.Count);
    }
}
