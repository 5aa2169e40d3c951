namespace Advance.Handbook;

/// <summary>Fuses whose loop impedance is tabulated.</summary>
public enum FuseType
{
    /// <summary>General-purpose fuse-links gG of BS 88-2 (IEC 60269-2), as in services.</summary>
    GeneralPurpose,

    /// <summary>The fuse of BS 1362 in a British plug.</summary>
    Plug,
}
