using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>BS 7671, requirements for electrical installations, appendix 4. The tables bear these numbers since 2008 (from memory).</summary>
public static class Bs7671
{
    private const string Title = "BS 7671";
    private const string Edition = "2008 and later";

    /// <summary>Current-carrying capacity of 60 °C flexible cords, used below 4 mm².</summary>
    public static readonly Publication Table4F3A = new(Title, Edition, "Table 4F3A", Standing.Read);

    /// <summary>Voltage drop of 60 °C flexible cords, used below 4 mm².</summary>
    public static readonly Publication Table4F3B = new(Title, Edition, "Table 4F3B", Standing.Read);

    /// <summary>Current-carrying capacity of 60 °C rubber flexible cables, from 4 mm².</summary>
    public static readonly Publication Table4F1A = new(Title, Edition, "Table 4F1A", Standing.Read);

    /// <summary>Voltage drop of 60 °C rubber flexible cables, from 4 mm².</summary>
    public static readonly Publication Table4F1B = new(Title, Edition, "Table 4F1B", Standing.Read);

    /// <summary>The most that voltage may drop.</summary>
    public static readonly Publication Table4Ab = new(Title, Edition, "Table 4Ab", Standing.Read);
}
