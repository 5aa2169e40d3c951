using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One current on a leg, as far as it can be added to others as a phasor.</summary>
/// <param name="Current">True root mean square.</param>
/// <param name="Lag">How far its fundamental lags the voltage that drives it; null where nobody knows.</param>
/// <param name="ThirdHarmonic">As a share of the fundamental; null where nobody knows.</param>
internal readonly record struct LegDraw(Figure<ElectricCurrent> Current, Figure<Angle>? Lag, Figure<Ratio>? ThirdHarmonic)
{
    /// <summary>Harmonics above the third that somebody gave.</summary>
    public IReadOnlyList<Harmonic> Higher { get; init; } = [];

    /// <summary>By how many degrees the voltage that drives it leads this leg's voltage to neutral.</summary>
    public double Turn { get; init; }

    /// <summary>Whether angle and third harmonic are known, without which only its magnitude can be added.</summary>
    public bool IsPhasor => Lag?.Value is not null && ThirdHarmonic?.Value is not null;

    /// <summary>All its harmonics.</summary>
    public IEnumerable<Harmonic> Harmonics => Higher.Prepend(new Harmonic(3, ThirdHarmonic!));

    /// <summary>A current of which nothing else is known.</summary>
    public static LegDraw Plain(Figure<ElectricCurrent> current) => new(current, null, null);

    /// <summary>A current of a load between a leg and the neutral.</summary>
    public static LegDraw Of(PowerLoad load, Figure<ElectricCurrent> current) => new(current, load.Lag, load.ThirdHarmonic) { Higher = load.HigherHarmonics };

    /// <summary>What a draw puts on one of its lines.</summary>
    public static LegDraw Of(WiredDraw draw, LegAngles angles, int line) => draw.Load is null || draw.Wiring.Kind == MainsWiringKind.SomeLine
        ? Plain(draw.Current)
        : Of(draw.Load, draw.Current) with { Turn = draw.Wiring.Turn(angles, line) };
}
