namespace Advance.Domain.Gigs;

/// <summary>Which way round a signal drives.</summary>
public enum Polarity
{
    /// <summary><c>normal</c></summary>
    Normal,

    /// <summary><c>reversed</c></summary>
    Reversed,
}
