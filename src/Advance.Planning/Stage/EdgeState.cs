namespace Advance.Planning;

/// <summary>What is along an edge of a stage.</summary>
public enum EdgeState
{
    /// <summary>Nobody said whether it has a rail.</summary>
    NotSaid,

    /// <summary>Nothing.</summary>
    Open,

    /// <summary>A rail.</summary>
    Railed,

    /// <summary>A wall.</summary>
    Wall,

    /// <summary>The audience looks over it, so that it stays open.</summary>
    Audience,
}
