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
    Given<ElectricResistance>? Impedance)
{
    /// <summary>Whether it plays only the lows. A box whose link hands on the high-passed signal does, whatever is said.</summary>
    public bool IsSub { get; init; }

    /// <summary>Whether it can be set as the rear-facing box of a pair: its polarity reversed, with the delay that its range allows.</summary>
    public bool MayFaceRear { get; init; }

    /// <summary>How it hangs; null where nobody says.</summary>
    public Flying? Flying { get; init; }

    /// <summary>The filters that a box or processor can set; empty where the stock does not say.</summary>
    public IReadOnlyList<Filter> Filters { get; init; } = [];

    /// <summary>Of an amplifier, the least impedance that one channel drives; null where not said.</summary>
    public Given<ElectricResistance>? LeastImpedance { get; init; }
}
