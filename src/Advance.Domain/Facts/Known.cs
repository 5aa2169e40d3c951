namespace Advance.Domain.Facts;

/// <summary>How a value came to be known; the margin on a weight hangs on it.</summary>
public enum Known
{
    /// <summary>Somebody wrote it down and said no more.</summary>
    Stated,

    /// <summary>Weighed or measured.</summary>
    Weighed,

    /// <summary>From the maker's papers.</summary>
    Maker,

    /// <summary>A guess.</summary>
    Estimated,
}
