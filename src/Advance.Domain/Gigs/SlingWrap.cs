namespace Advance.Domain.Gigs;

/// <summary>How often a sling goes around a chord.</summary>
public enum SlingWrap
{
    /// <summary><c>single</c>.</summary>
    Single,

    /// <summary><c>double</c>: it grips, and does not slide along the chord.</summary>
    Double,
}
