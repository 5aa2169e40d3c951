using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>One circuit of a distribution, or several alike.</summary>
/// <param name="Numbers">Which circuits.</param>
/// <param name="Connector">What plugs in.</param>
/// <param name="Phase">Which phase it is on: <c>L1</c>, <c>L1-L2</c>, <c>L1-L2-N</c>; empty for the only one, or all.</param>
/// <param name="Device">Protective device and curve, as written: <c>C16</c>.</param>
/// <param name="Rating">What the device allows.</param>
/// <param name="Residual">Rated residual current.</param>
/// <param name="At">Where it was written.</param>
public sealed record OutletRow(
    NumberRange Numbers, string Connector, string Phase, string Device, Given<ElectricCurrent> Rating, Given<ElectricCurrent> Residual, Mark At)
{
    /// <summary>Type of its residual-current device: <c>AC</c>, <c>A</c>, <c>F</c>, <c>B</c>; null where nobody says.</summary>
    public Given<string>? ResidualType { get; init; }

    /// <summary>How long its residual-current device waits, 0 for one that does not; null where nobody says.</summary>
    public Given<Duration>? ResidualDelay { get; init; }

    /// <summary>What its device can break; null where nobody says.</summary>
    public Given<ElectricCurrent>? Breaks { get; init; }
}
