namespace Advance.Domain.Gigs;

/// <summary>Who is below what hangs, and when.</summary>
public enum PeopleBelow
{
    /// <summary><c>never</c>: the area is clear.</summary>
    Never,

    /// <summary><c>at rest</c>: while it does not move.</summary>
    AtRest,

    /// <summary><c>moving</c>: also while it moves.</summary>
    Moving,
}
