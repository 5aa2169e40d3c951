namespace Advance.Paper.Tree;

/// <summary>Which edge text keeps to.</summary>
public enum Align
{
    /// <summary>The left one.</summary>
    Left,

    /// <summary>The right one, as figures do.</summary>
    Right,

    /// <summary>The middle.</summary>
    Centre,
}
