namespace Advance.Paper.Tree;

/// <summary>Which edge of the paper is at the top.</summary>
public enum Orientation
{
    /// <summary>The short edge.</summary>
    Portrait,

    /// <summary>The long edge.</summary>
    Landscape,
}
