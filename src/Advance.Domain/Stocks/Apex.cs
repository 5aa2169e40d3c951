namespace Advance.Domain.Stocks;

/// <summary>Which way up a truss of three chords hangs.</summary>
public enum Apex
{
    /// <summary><c>up</c>: one chord above two.</summary>
    Up,

    /// <summary><c>down</c>: one chord below two.</summary>
    Down,
}
