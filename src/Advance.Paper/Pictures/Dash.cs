namespace Advance.Paper.Pictures;

/// <summary>How a line is broken.</summary>
public enum Dash
{
    /// <summary>Not at all.</summary>
    Solid,

    /// <summary>Dashes: what is hidden, or marked on the floor.</summary>
    Dashed,

    /// <summary>Dots: what is only thought of.</summary>
    Dotted,

    /// <summary>Dash and dot: a centre line.</summary>
    Centre,
}
