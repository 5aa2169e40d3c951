namespace Advance.Planning;

/// <summary>What is joined by audio copper stays on one supply, and lights stay off that supply where they can.</summary>
internal enum CircuitEarth
{
    /// <summary>May hang anywhere.</summary>
    Free,

    /// <summary>Joined to others by audio copper.</summary>
    Sound,

    /// <summary>A fixture.</summary>
    Light,
}
