using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>The room that the stage stands in.</summary>
/// <param name="ClearHeight">From floor to the lowest thing overhead; null where not said.</param>
/// <param name="Floor">What it is made of; empty where not said.</param>
/// <param name="Seats">Who sits how; empty where not said.</param>
public sealed record Hall(Given<Length>? ClearHeight, string Floor, string Seats)
{
    /// <summary>Nothing said.</summary>
    public static readonly Hall Unknown = new(null, "", "");

    /// <summary>Whether snow may lie on its roof while something hangs there; null where not said.</summary>
    public Given<bool>? HasSnow { get; init; }

    /// <summary>Whether water may stand on its roof: a flat one, a tent; null where not said.</summary>
    public Given<bool>? HasPonding { get; init; }

    /// <summary>Whether wind gets at what stands there; null where not said.</summary>
    public Given<bool>? IsOpenAir { get; init; }
}
