namespace Advance.Planning;

/// <summary>Which boxes of a stack hang on one output.</summary>
public enum ChainPart
{
    /// <summary>All that have no output of their own.</summary>
    Main,

    /// <summary>Its tops, where they have one of their own.</summary>
    Tops,

    /// <summary>Its rear-facing boxes, where they have one of their own.</summary>
    Rear,
}
