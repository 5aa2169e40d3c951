using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>IEC 61008-1 and IEC 61009-1, residual current operated circuit-breakers for household and similar uses. The year is from memory.</summary>
public static class Iec61008
{
    /// <summary>The longest break times of general and delayed devices, as two makers of test sets print them.</summary>
    public static readonly Publication BreakTime = new("IEC 61008-1", "2010", "maximum break times", Standing.Read);
}
