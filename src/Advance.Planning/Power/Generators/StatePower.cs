using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a service gives in one show state, with loads in use.</summary>
/// <param name="State">Which.</param>
/// <param name="Real">Real power of everything on it.</param>
/// <param name="Apparent">Apparent power: voltage to neutral times the line currents added up.</param>
/// <param name="Sure">Real power of our own loads alone, without allowances and neighbours, who may stay away.</param>
/// <param name="Leading">Reactive power that leads, less what lags; nought where all of it lags.</param>
public sealed record StatePower(
    ShowState State, Figure<UnitsNet.Power> Real, Figure<ElectricApparentPower> Apparent, Figure<UnitsNet.Power> Sure, Figure<ElectricApparentPower> Leading)
{
    /// <summary>The state in words: <c>sound check</c>.</summary>
    public string StateInWords => StateShares.Word(State);

    /// <summary>Real over apparent power; unknown where nothing flows.</summary>
    public required Figure<double> Factor { get; init; }

    /// <summary>Negative over positive sequence of the line currents; null on other than three legs.</summary>
    public Figure<Ratio>? Unbalance { get; init; }
}
