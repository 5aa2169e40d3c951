using UnitsNet;

namespace Advance.Handbook;

/// <summary>Cords of North America that count as protected by a branch circuit's device, though they carry less than it lets through.</summary>
public static class CordProtection
{
    private const double MostDevice = 20;
    private const double ThinnestSection = 1.3;

    /// <summary>
    /// Whether a cord or cord set of this size is protected by a device: 16 AWG and thicker behind 20 A and less. Source:
    /// <see cref="Nec.CordsOnBranchCircuits"/>.
    /// </summary>
    /// <param name="gauge">AWG, without the letters; what is none is not protected.</param>
    /// <param name="device">What the device is rated.</param>
    public static bool Holds(string gauge, ElectricCurrent device) =>
        device.Amperes <= MostDevice && WireGauge.SquareMillimetres(gauge) is { } section && section > ThinnestSection;

    /// <summary>
    /// Whether a connector may be on a branch circuit of this rating though it carries less: 15 A on 20 A. Source: <see cref="Nec.Receptacles"/>.
    /// </summary>
    /// <param name="connector">What it is rated.</param>
    /// <param name="device">What the circuit is rated.</param>
    public static bool HoldsConnector(ElectricCurrent connector, ElectricCurrent device) => device.Amperes <= MostDevice && connector.Amperes >= 15;
}
