namespace Advance.Domain.Stocks;

/// <summary>Which chords of a truss the slings of a pick hold.</summary>
public enum HeldChords
{
    /// <summary><c>all</c>: the lower ones, and the upper ones on the way up.</summary>
    All,

    /// <summary><c>lower</c>.</summary>
    Lower,

    /// <summary><c>upper</c>.</summary>
    Upper,
}
