namespace Advance.Paper.Pictures;

/// <summary>How the scale of a scene is chosen.</summary>
public enum Scaling
{
    /// <summary>The largest usual ratio (1 : 10, 20, 25, 50, 100 and so on) that fits, with a scale bar and the ratio in words.</summary>
    Ratio,

    /// <summary>Drawn 1 : 1 in millimetres of the paper, and smaller only where there is no room; nothing is said about scale.</summary>
    Diagram,

    /// <summary>As large as there is room for, smaller or larger than life; nothing is said about scale.</summary>
    Fill,
}
