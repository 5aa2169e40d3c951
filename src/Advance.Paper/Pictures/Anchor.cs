namespace Advance.Paper.Pictures;

/// <summary>Which point of a text is meant.</summary>
public enum Anchor
{
    /// <summary>The middle both ways.</summary>
    Middle,

    /// <summary>The middle of the left edge: the text stands to the right of the place.</summary>
    Left,

    /// <summary>The middle of the right edge: the text stands to the left of the place.</summary>
    Right,

    /// <summary>The middle of the upper edge: the text stands below the place.</summary>
    Top,

    /// <summary>The middle of the lower edge: the text stands above the place.</summary>
    Bottom,
}
