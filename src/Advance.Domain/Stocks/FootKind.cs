namespace Advance.Domain.Stocks;

/// <summary>What a thing stands on.</summary>
public enum FootKind
{
    /// <summary>Its own base or firm feet.</summary>
    Firm,

    /// <summary>Feet that are screwed level.</summary>
    Levelling,

    /// <summary>Castors, or a dolly.</summary>
    Castors,
}
