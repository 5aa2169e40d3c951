using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>IEC 60898-1, circuit-breakers for overcurrent protection for household and similar installations. The year is from memory.</summary>
public static class Iec60898
{
    private const string Title = "IEC 60898-1";
    private const string Edition = "2015";

    /// <summary>Ranges of instantaneous tripping.</summary>
    public static readonly Publication Instantaneous = new(Title, Edition, "instantaneous tripping of types B, C and D", Standing.Read);

    /// <summary>How long instantaneous tripping takes.</summary>
    public static readonly Publication Time = new(Title, Edition, "Table 7, less than 0.1 s", Standing.FromMemory);

    /// <summary>What breakers that limit the current let through; the European annex to the standard.</summary>
    public static readonly Publication EnergyClass = new("EN 60898-1", "", "annex ZA, energy limiting class 3", Standing.FromMemory);
}
