using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>IEC 60065, audio, video and similar electronic apparatus: mains input is measured at an eighth of full output.</summary>
public static class Iec60065
{
    /// <summary>Normal operating power: pink noise at an eighth of full power.</summary>
    public static readonly Publication OperatingPower = new("IEC 60065", "", "normal operating conditions", Standing.Read);
}
