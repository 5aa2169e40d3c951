using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>EN 1991-1-4, actions on structures, wind.</summary>
public static class En1991
{
    private const string Title = "EN 1991-1-4";
    private const string Edition = "2005";

    /// <summary>Pressure of moving air, equation 4.10.</summary>
    public static readonly Publication Pressure = new(Title, Edition, "eq. 4.10", Standing.Read);

    /// <summary>Mean wind, turbulence and gust pressure over a terrain; the numbers of the terrains are from memory.</summary>
    public static readonly Publication Profile = new(Title, Edition, "4.3 to 4.5, Table 4.1", Standing.FromMemory);

    /// <summary>Free-standing walls: 3.4 at the ends of a long one without returns.</summary>
    public static readonly Publication FreeWalls = new(Title, Edition, "7.4.1, Table 7.9", Standing.FromMemory);

    /// <summary>Force coefficients of signs and of sections with sharp edges.</summary>
    public static readonly Publication Forces = new(Title, Edition, "7.4.3, 7.6", Standing.FromMemory);
}
