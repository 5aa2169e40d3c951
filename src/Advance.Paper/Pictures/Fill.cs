namespace Advance.Paper.Pictures;

/// <summary>What a shape is filled with; each reads in black and white.</summary>
public enum Fill
{
    /// <summary>Nothing: what lies behind is seen.</summary>
    None,

    /// <summary>Paper: what lies behind is hidden.</summary>
    White,

    /// <summary>Ink.</summary>
    Black,

    /// <summary>A light grey.</summary>
    Grey,

    /// <summary>Thin slanting lines: unknown, or keep clear.</summary>
    Hatch,
}
