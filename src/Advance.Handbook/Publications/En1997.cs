using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>EN 1997-1, geotechnical design.</summary>
public static class En1997
{
    /// <summary>Effective width under a load off centre, after Meyerhof.</summary>
    public static readonly Publication EffectiveWidth = new("EN 1997-1", "2004", "Annex D", Standing.FromMemory);
}
