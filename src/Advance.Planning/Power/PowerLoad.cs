using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One thing that draws current.</summary>
/// <param name="Address">Of the piece, or of the thing that stands for several.</param>
/// <param name="Name">On paper and on leads; no two loads have the same.</param>
/// <param name="Piece">The piece; null for what nobody knows one by one.</param>
/// <param name="Use">What it is.</param>
/// <param name="InUse">Drawn in use; unknown where nobody says.</param>
/// <param name="AtMost">Drawn at most.</param>
/// <param name="Leakage">Current in its protective conductor.</param>
/// <param name="Inrush">Peak when it is switched on.</param>
/// <param name="Lag">How far its fundamental lags the voltage; null where nobody says.</param>
/// <param name="ThirdHarmonic">As a share of the fundamental; null where nobody says.</param>
/// <param name="Takes">Voltages and frequency it takes; null where nobody says.</param>
/// <param name="Inlet">Its connector; empty where nobody knows.</param>
/// <param name="Link">Outlet that hands the mains on; empty where it has none.</param>
/// <param name="LinkCarries">What that outlet may carry.</param>
/// <param name="Spot">Where it stands; null where nobody knows.</param>
/// <param name="Height">How far it hangs above the stage or the floor there, in metres; null where nobody knows.</param>
/// <param name="Act">The act whose it is; null for what is there all day.</param>
/// <param name="IsAssumed">Whether its draw is a policy's and nobody's word.</param>
/// <param name="At">Where it was asked for.</param>
public sealed record PowerLoad(
    Address Address,
    string Name,
    Piece? Piece,
    PowerUse Use,
    Figure<ElectricCurrent> InUse,
    Figure<ElectricCurrent> AtMost,
    Figure<ElectricCurrent> Leakage,
    Figure<ElectricCurrent> Inrush,
    Figure<Angle>? Lag,
    Figure<Ratio>? ThirdHarmonic,
    Given<Supply>? Takes,
    string Inlet,
    string Link,
    Figure<ElectricCurrent> LinkCarries,
    Spot? Spot,
    double? Height,
    string? Act,
    bool IsAssumed,
    Mark At)
{
    /// <summary>Where leads go to; null also where nobody knows how high it hangs, for a lead that is cut to the floor would be too short.</summary>
    public Spot? LeadSpot => Height is null ? null : Spot;

    /// <summary>Its fifth, seventh and ninth harmonic, as far as somebody gave them.</summary>
    public IReadOnlyList<Harmonic> HigherHarmonics { get; init; } = [];

    /// <summary>Its power factor; null where nobody says.</summary>
    public Figure<double>? PowerFactor { get; init; }

    /// <summary>Whether it may draw its most for three hours or more; null where nobody says.</summary>
    public Given<bool>? Continuous { get; init; }

    /// <summary>Whether it draws more current as the voltage falls.</summary>
    public bool IsSteady { get; init; }

    /// <summary>The open questions about where it is and how high.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;

    /// <summary>Mains leads that always come with it, by id.</summary>
    public IReadOnlyDictionary<string, Cable> Leads { get; init; } = new Dictionary<string, Cable>(StringComparer.Ordinal);
}
