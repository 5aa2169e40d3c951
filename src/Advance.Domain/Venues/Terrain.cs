namespace Advance.Domain.Venues;

/// <summary>What the wind comes over, as EN 1991-1-4 sorts it.</summary>
public enum Terrain
{
    /// <summary>Category II: low vegetation and single obstacles, fields.</summary>
    Open,

    /// <summary>Category 0: sea, and coast open to it.</summary>
    Sea,

    /// <summary>Category I: lakes, flat and without obstacles.</summary>
    Flat,

    /// <summary>Category III: villages, suburbs, woods.</summary>
    Suburb,

    /// <summary>Category IV: at least 15 % built over, houses over 15 m on average.</summary>
    Town,
}
