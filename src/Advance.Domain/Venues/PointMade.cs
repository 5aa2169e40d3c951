namespace Advance.Domain.Venues;

/// <summary>How a point of the roof is made.</summary>
public enum PointMade
{
    /// <summary><c>clamp</c>: on the flange of a beam.</summary>
    Clamp,

    /// <summary><c>eye</c>: a bolt or a plate with an eye.</summary>
    Eye,

    /// <summary><c>bare</c>: the steel itself, to put a sling or a wire rope around.</summary>
    Bare,
}
