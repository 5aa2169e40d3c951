using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>The US Department of Energy's Fundamentals Handbook, Electrical Science: power in circuits. The year is from memory.</summary>
public static class DoeHandbook
{
    private const string Title = "US DOE Fundamentals Handbook, Electrical Science";

    /// <summary>Power, current and power factor of one and of three phases.</summary>
    public static readonly Publication AcPower = new(Title, "1992", "AC power", Standing.Read);
}
