using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>IEC 60364-5-52, low-voltage electrical installations, wiring systems.</summary>
public static class Iec60364
{
    private const string Title = "IEC 60364-5-52";
    private const string Edition = "2009";

    /// <summary>Harmonic currents in four- and five-core cables.</summary>
    public static readonly Publication AnnexE = new(Title, Edition, "Annex E, Table E.52.1", Standing.Read);

    /// <summary>Voltage drop.</summary>
    public static readonly Publication AnnexG = new(Title, Edition, "Annex G", Standing.Read);

    /// <summary>The most that voltage may drop.</summary>
    public static readonly Publication TableG52 = new(Title, Edition, "Table G.52.1", Standing.Read);

    /// <summary>Generating sets: protection must work with what they deliver into a fault. The part is 5-55; the multiple is what makers print.</summary>
    public static readonly Publication Generators = new("IEC 60364-5-55", "2011", "551; sustained short-circuit current as makers print it", Standing.FromMemory);
}
