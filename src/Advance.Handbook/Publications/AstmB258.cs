using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>ASTM B258, standard nominal diameters of round wire. The number is from memory; the formula was read in many pages.</summary>
public static class AstmB258
{
    /// <summary>American wire gauge.</summary>
    public static readonly Publication Gauge = new("ASTM B258", "", "American wire gauge", Standing.Read);
}
