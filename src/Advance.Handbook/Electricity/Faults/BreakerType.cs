namespace Advance.Handbook;

/// <summary>Instantaneous tripping of circuit-breakers of IEC 60898-1; the letter before the rating in C16.</summary>
public enum BreakerType
{
    /// <summary>Between 3 and 5 times the rating.</summary>
    B,

    /// <summary>Between 5 and 10 times the rating.</summary>
    C,

    /// <summary>Between 10 and 20 times the rating.</summary>
    D,
}
