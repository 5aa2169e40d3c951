using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>IEC 60228 (BS EN 60228), conductors of insulated cables. The year is from memory.</summary>
public static class Iec60228
{
    private const string Title = "IEC 60228";
    private const string Edition = "2004";

    /// <summary>Flexible copper conductors for single-core and multi-core cables: the highest direct-current resistance at 20 °C.</summary>
    public static readonly Publication Class5 = new(Title, Edition, "Table 3, class 5", Standing.Read);

    /// <summary>Resistance at other temperatures, for copper.</summary>
    public static readonly Publication Temperature = new(Title, Edition, "temperature correction, α₂₀ = 0.00393", Standing.Read);
}
