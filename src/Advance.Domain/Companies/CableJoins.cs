namespace Advance.Domain.Companies;

/// <summary>The most joins in one run, by what it is for; 0 or more: the <c>joins</c>. Common practice, no source.</summary>
public sealed record CableJoins
{
    /// <summary>The settings shipped.</summary>
    public static readonly CableJoins Default = new();

    /// <summary><c>mic</c>: microphones, DIs and returns.</summary>
    public int Mic { get; init; } = 1;

    /// <summary><c>loudspeaker</c>: from amplifiers, and whatever has no row of its own.</summary>
    public int Loudspeaker { get; init; } = 1;

    /// <summary><c>mains</c>: from an outlet to a unit and from unit to unit.</summary>
    public int Mains { get; init; } = 1;

    /// <summary><c>feeder</c>: to a distribution.</summary>
    public int Feeder { get; init; }

    /// <summary><c>network</c>: network, fibre and multis.</summary>
    public int Network { get; init; }

    /// <summary><c>lighting-control</c></summary>
    public int LightingControl { get; init; } = 1;
}
