namespace Advance.Paper.Tree;

/// <summary>What a row is to its neighbours.</summary>
public enum RowKind
{
    /// <summary>An ordinary row.</summary>
    Normal,

    /// <summary>A companion of the row above: indented, never parted from it.</summary>
    Sub,

    /// <summary>A point where all stop: its first cell takes the full width between heavy rules.</summary>
    Hold,

    /// <summary>A total: strong, under a full line.</summary>
    Total,
}
