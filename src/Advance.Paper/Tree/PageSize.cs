namespace Advance.Paper.Tree;

/// <summary>The papers that an office or a shop has.</summary>
public enum PageSize
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>297 by 420 mm.</summary>
    A3,

    /// <summary>8.5 by 11 in.</summary>
    Letter,

    /// <summary>11 by 17 in.</summary>
    Tabloid,
}
