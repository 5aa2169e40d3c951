using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>The guidance notes on BS 7671. The number of the note is from memory; the rule was read on pages for electricians.</summary>
public static class IetGuidance
{
    /// <summary>The three-phase fault current is taken as twice that of one line.</summary>
    public static readonly Publication ThreePhaseFault = new("IET Guidance Note 3", "", "prospective fault current of three phases", Standing.Read);
}
