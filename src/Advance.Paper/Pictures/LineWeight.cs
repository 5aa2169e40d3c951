namespace Advance.Paper.Pictures;

/// <summary>Weights of lines on the paper, whatever the scale.</summary>
public enum LineWeight
{
    /// <summary>No line.</summary>
    None,

    /// <summary>0.1 mm, grey.</summary>
    Hair,

    /// <summary>0.18 mm.</summary>
    Thin,

    /// <summary>0.35 mm.</summary>
    Normal,

    /// <summary>0.7 mm.</summary>
    Heavy,
}
