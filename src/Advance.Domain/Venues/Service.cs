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

    /// <summary>Whose rules hold; null where nobody says.</summary>
    public Given<WiringRules>? Rules { get; init; }

    /// <summary>What it hangs on together with others, by its name in the venue; null where it hangs on nothing that is known.</summary>
    public Given<string>? Upstream { get; init; }

    /// <summary>Of one line behind an upstream limit of several: which of them, <c>L2</c>; null where nobody says, and where it has them all.</summary>
    public Given<string>? UpstreamLine { get; init; }
}
