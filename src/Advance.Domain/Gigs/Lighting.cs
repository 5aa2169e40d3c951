namespace Advance.Domain.Gigs;

/// <summary>Lighting as written.</summary>
/// <param name="Control">The desk; null where there is none.</param>
/// <param name="Positions">Where fixtures stand or hang.</param>
/// <param name="Fixtures">What is there.</param>
public sealed record Lighting(Device? Control, IReadOnlyList<Position> Positions, IReadOnlyList<FixtureRow> Fixtures)
{
    /// <summary>No lighting.</summary>
    public static readonly Lighting None = new(null, [], []);
}
