using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>A way that cables take.</summary>
/// <param name="Name">Its key.</param>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="By">Corners on the way, in order.</param>
/// <param name="Laid">How it is laid, as written.</param>
/// <param name="At">Where it was written.</param>
public sealed record CableWay(string Name, Given<Place> From, Given<Place> To, IReadOnlyList<Given<Place>> By, string Laid, Mark At)
{
    /// <summary>How many ramps or bridges leads go up and over on; null where not said, and then one if <see cref="Laid"/> speaks of one.</summary>
    public Given<int>? Ramps { get; init; }

    /// <summary>How leads lie in it: apart, in one layer, bunched, under a ramp, buried; null where nobody says.</summary>
    public Given<LaidHow>? How { get; init; }

    /// <summary>How many loaded circuits of others share it; null where nobody says.</summary>
    public Given<int>? OtherCircuits { get; init; }

    /// <summary>The highest temperature of the air in it; null where nobody says.</summary>
    public Given<Temperature>? Air { get; init; }

    /// <summary>What covered cable in it still carries, as a share; null where nobody says, and it is asked where the way is covered.</summary>
    public Given<Ratio>? CoverFactor { get; init; }

    /// <summary>All its corners, from one end to the other.</summary>
    public IReadOnlyList<Given<Place>> Along => [From, .. By, To];
}
