using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>Standards of mains connectors.</summary>
public static class ConnectorStandards
{
    /// <summary>Industrial connectors: a colour for each range of voltage, and the earth contact at an hour of its own.</summary>
    public static readonly Publication Iec60309 = new("IEC 60309-2", "", "earth contact positions and colours", Standing.Read);

    /// <summary>Appliance couplers, with the ratings of IEC and of North America.</summary>
    public static readonly Publication Iec60320 = new("IEC 60320", "", "standard sheets C13 to C20", Standing.Read);

    /// <summary>Connectors of North America: the number before the dash says voltage and poles, that behind it amperes.</summary>
    public static readonly Publication NemaWd6 = new("ANSI/NEMA WD 6", "", "configurations", Standing.Read);

    /// <summary>The British domestic plug, with a fuse of its own.</summary>
    public static readonly Publication Bs1363 = new("BS 1363", "", "13 A plug", Standing.FromMemory);

    /// <summary>The round-pin plugs of the continent.</summary>
    public static readonly Publication Cee7 = new("CEE 7", "", "16 A, standard sheets IV and VII", Standing.FromMemory);

    /// <summary>Single-pole connectors of the larger feeders.</summary>
    public static readonly Publication Ul1691 = new("UL 1691", "", "single pole locking-type separable connectors", Standing.FromMemory);
}
