using UnitsNet;

namespace Advance.Domain.Places;

/// <summary>Which way a thing faces, seen from above.</summary>
public abstract record Aim
{
    private Aim()
    {
    }

    /// <summary>Straight downstage: <c>straight</c>.</summary>
    public sealed record Straight : Aim
    {
        /// <summary>The only one.</summary>
        public static readonly Straight It = new();
    }

    /// <summary>Turned towards the centre line or away from it: <c>toe-in 5 deg</c>, <c>toe-out 10 deg</c>.</summary>
    /// <param name="In">From straight downstage towards the centre line, -180 to 180 degrees; negative is toe-out.</param>
    public sealed record Toed(Angle In) : Aim;

    /// <summary>At a place: <c>at dance floor</c>, <c>at DS 16 m</c>.</summary>
    /// <param name="Target">The place aimed at.</param>
    public sealed record AtPlace(Place Target) : Aim;
}
