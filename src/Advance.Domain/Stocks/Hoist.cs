using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What only a chain hoist has. What it may lift goes by who is below.</summary>
/// <param name="Lifts">With nobody below.</param>
/// <param name="Holds">At rest over people; null where it may not.</param>
/// <param name="Moves">Moving over people; null where it may not.</param>
public sealed record Hoist(Given<Mass> Lifts, Given<Mass>? Holds, Given<Mass>? Moves)
{
    /// <summary>Of its chain; null where nobody says.</summary>
    public Given<LinearDensity>? Chain { get; init; }

    /// <summary>How much chain is on it; null where nobody says.</summary>
    public Given<Length>? ChainLength { get; init; }

    /// <summary>How many falls of chain bear the hook, 1 or 2.</summary>
    public int Falls { get; init; } = 1;

    /// <summary>From one link to the next; null where nobody says.</summary>
    public Given<Length>? Link { get; init; }

    /// <summary>How fast it goes; null where nobody says.</summary>
    public Given<Speed>? Speed { get; init; }

    /// <summary>How long it is from its hook to the other, run right up; null where nobody says.</summary>
    public Given<Length>? Headroom { get; init; }

    /// <summary>How many brakes it has that each hold all it lifts; null where nobody says.</summary>
    public Given<int>? Brakes { get; init; }

    /// <summary>Whether it has a load cell.</summary>
    public bool HasLoadCell { get; init; }

    /// <summary>At how much of what it lifts its limiter slips; null where nobody says.</summary>
    public Given<Ratio>? Limiter { get; init; }
}
