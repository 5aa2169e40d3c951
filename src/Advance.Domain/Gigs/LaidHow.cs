namespace Advance.Domain.Gigs;

/// <summary>How leads lie in a way.</summary>
public enum LaidHow
{
    /// <summary><c>apart</c>: each by itself, a cable's width from the next.</summary>
    Apart,

    /// <summary><c>one layer</c>: side by side on a floor.</summary>
    OneLayer,

    /// <summary><c>bunched</c>: on top of each other, or tied together.</summary>
    Bunched,

    /// <summary><c>ramp</c>: together under a ramp, a mat or a bridge.</summary>
    Ramp,

    /// <summary><c>buried</c>.</summary>
    Buried,
}
