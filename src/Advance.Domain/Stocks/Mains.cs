using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What a powered thing asks of the mains.</summary>
/// <param name="Supply">Voltages and frequency it takes.</param>
/// <param name="InUse">Draw in use.</param>
/// <param name="AtMost">Draw at most.</param>
/// <param name="PowerFactor">0 to 1.</param>
/// <param name="Inrush">Peak current when switched on.</param>
/// <param name="Leakage">Protective-conductor current.</param>
/// <param name="Inlet">Connector.</param>
/// <param name="Link">Outlet that hands the mains on; empty where there is none.</param>
/// <param name="LinkCarries">What that outlet may carry.</param>
/// <param name="ThirdHarmonic">Share of the fundamental.</param>
/// <param name="Displacement">How far the fundamental lags the voltage; negative where it leads. Not the arc cosine of the power factor.</param>
public sealed record Mains(
    Given<Supply>? Supply,
    Given<ElectricCurrent>? InUse,
    Given<ElectricCurrent>? AtMost,
    Given<double>? PowerFactor,
    Given<ElectricCurrent>? Inrush,
    Given<ElectricCurrent>? Leakage,
    string Inlet,
    string Link,
    Given<ElectricCurrent>? LinkCarries,
    Given<Ratio>? ThirdHarmonic,
    Given<Angle>? Displacement = null)
{
    /// <summary>Share of the fundamental.</summary>
    public Given<Ratio>? FifthHarmonic { get; init; }

    /// <summary>Share of the fundamental.</summary>
    public Given<Ratio>? SeventhHarmonic { get; init; }

    /// <summary>Share of the fundamental.</summary>
    public Given<Ratio>? NinthHarmonic { get; init; }

    /// <summary>Whether it may draw its most for three hours or more without a pause.</summary>
    public Given<bool>? Continuous { get; init; }

    /// <summary>Whether it draws more current as the voltage falls, so that its power stays the same.</summary>
    public Given<bool>? SteadyPower { get; init; }

    /// <summary>Whether it starts some time after the mains come back, by itself, so that not all start at once; null where nobody says.</summary>
    public Given<bool>? StartsLater { get; init; }

    /// <summary>Of which type a residual-current device before it must be; null where nobody says.</summary>
    public Given<string>? NeedsResidualType { get; init; }

    /// <summary>Whether it dims by cutting the wave, so that its neutral carries more than its lines; null where nobody says.</summary>
    public Given<bool>? CutsPhase { get; init; }

    /// <summary>Whether people must find their way out by it, or are told to by it: exit lights, voice alarm; null where nobody says.</summary>
    public Given<bool>? IsLifeSafety { get; init; }

    /// <summary>Of a distribution: whether its neutral is joined to its earth inside; null where nobody says.</summary>
    public Given<bool>? NeutralEarthLink { get; init; }

    /// <summary>Whether it holds a motor that turns the other way when two lines are swapped.</summary>
    public Given<bool>? Turns { get; init; }

    /// <summary>Of a distribution: how much of their ratings its circuits may carry all at once, as its maker states.</summary>
    public Given<Ratio>? Loading { get; init; }
}
