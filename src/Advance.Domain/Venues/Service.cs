using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>A supply that the venue or a generator gives.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Place">Where it comes out, in words.</param>
/// <param name="Supply">Voltage, phases and frequency.</param>
/// <param name="Rating">Of its protective device.</param>
/// <param name="Connector">What plugs into it.</param>
/// <param name="Earthing">TN-S, TN-C-S, TT, IT.</param>
/// <param name="ResidualProtection">Rated residual current; unknown is never none.</param>
/// <param name="SharedWith">What else hangs on it.</param>
/// <param name="Behind">What it runs through, such as a sound limiter; null where nothing.</param>
/// <param name="At">Where it was written.</param>
public sealed record Service(
    string Name,
    Given<string> Place,
    Given<Supply> Supply,
    Given<ElectricCurrent> Rating,
    Given<string> Connector,
    Given<string> Earthing,
    Given<ElectricCurrent> ResidualProtection,
    IReadOnlyList<OtherLoad> SharedWith,
    Given<string>? Behind,
    Mark At)
{
    /// <summary>How much voltage is lost before it, from the origin of the installation; null where nobody says.</summary>
    public Given<Ratio>? DropUsed { get; init; }

    /// <summary>Where its neutral is joined to earth; <c>none</c> where it is nowhere; null where nobody says.</summary>
    public Given<string>? NeutralEarthLink { get; init; }

    /// <summary>Loop impedance at its outlet, line to earth; null where nobody has measured or stated it.</summary>
    public Given<ElectricResistance>? LoopImpedance { get; init; }

    /// <summary>The largest current that a fault may draw at its outlet; null where nobody says.</summary>
    public Given<ElectricCurrent>? FaultCurrent { get; init; }

    /// <summary>Resistance of its earth electrode; null where nobody says, or it has none.</summary>
    public Given<ElectricResistance>? Electrode { get; init; }

    /// <summary>Protective device and curve, as written: <c>C125</c>, <c>gG 63</c>; null where nobody says.</summary>
    public Given<string>? Device { get; init; }

    /// <summary>What that device can break; null where nobody says.</summary>
    public Given<ElectricCurrent>? Breaks { get; init; }

    /// <summary>Type of its residual-current device: <c>AC</c>, <c>A</c>, <c>F</c>, <c>B</c>; null where nobody says.</summary>
    public Given<string>? ResidualType { get; init; }

    /// <summary>How long its residual-current device waits, 0 for one that does not; null where nobody says.</summary>
    public Given<Duration>? ResidualDelay { get; init; }

    /// <summary>Whether what hangs on it stands in the open or in the wet; null where nobody says.</summary>
    public Given<bool>? IsOutdoor { get; init; }

    /// <summary>Who switches it off, and how; null where nobody says.</summary>
    public Given<string>? IsolatedBy { get; init; }

    /// <summary>The set that gives it; null where it is no generator.</summary>
    public Generator? Generator { get; init; }

    /// <summary>Whose rules hold; null where nobody says.</summary>
    public Given<WiringRules>? Rules { get; init; }

    /// <summary>What it hangs on together with others, by its name in the venue; null where it hangs on nothing that is known.</summary>
    public Given<string>? Upstream { get; init; }

    /// <summary>Of one line behind an upstream limit of several: which of them, <c>L2</c>; null where nobody says, and where it has them all.</summary>
    public Given<string>? UpstreamLine { get; init; }
}
