namespace Advance.Planning;

/// <summary>Between which conductors something lies.</summary>
public enum MainsWiringKind
{
    /// <summary>A line and the neutral.</summary>
    ToNeutral,

    /// <summary>Two lines, and no neutral.</summary>
    BetweenLines,

    /// <summary>All lines and the neutral, the same on each.</summary>
    EveryLine,

    /// <summary>Three lines, and no neutral.</summary>
    ThreeWire,

    /// <summary>A line and the neutral, and nobody knows which line: it counts on each.</summary>
    SomeLine,
}
