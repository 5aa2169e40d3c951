using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What only a loudspeaker has.</summary>
/// <param name="Top">Mating face on top; empty where nothing may stand there.</param>
/// <param name="Below">Mating face below.</param>
/// <param name="Rear">Mating face at the rear.</param>
/// <param name="MayPairWith">Id of the box it may be turned against; empty where none.</param>
/// <param name="PairedEnds">Which ends then meet: <c>high</c> or <c>low</c>.</param>
/// <param name="MayFly">Whether it may hang.</param>
/// <param name="AimRange">Electronic aim either way; null where it has none.</param>
/// <param name="DelayRange">Longest delay it can set; null where it has none.</param>
/// <param name="Software">Version expected; empty where it has none.</param>
/// <param name="Impedance">Nominal, for a passive box; null for a powered one.</param>
public sealed record Loudspeaker(
    string Top,
    string Below,
    string Rear,
    string MayPairWith,
    string PairedEnds,
    bool MayFly,
    Given<Angle>? AimRange,
    Given<Duration>? DelayRange,
    string Software,
    Given<ElectricResistance>? Impedance);
