using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>ANSI E1.11, asynchronous serial digital data transmission standard for controlling lighting equipment (DMX512-A).</summary>
public static class AnsiE111
{
    private const string Title = "ANSI E1.11";
    private const string Edition = "2008";

    /// <summary>A packet has up to 512 slots. The year is from memory.</summary>
    public static readonly Publication Slots = new(Title, Edition, "512 slots a packet", Standing.Read);

    /// <summary>A line drives 32 unit loads, as in EIA-485.</summary>
    public static readonly Publication UnitLoads = new(Title, Edition, "32 unit loads a line (EIA-485)", Standing.Read);

    /// <summary>Which pin of the connector carries what.</summary>
    public static readonly Publication Pins = new(Title, Edition, "connector pins", Standing.Read);
}
