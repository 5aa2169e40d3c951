using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Domain.Gigs;

/// <summary>A console, stage box, processor, distribution or lighting desk: one piece with a name and ports.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Item">Its kind.</param>
/// <param name="Place">Where it stands; null where not said.</param>
/// <param name="FedBy">What feeds it (<c>fed-by</c>); null where not said.</param>
/// <param name="To">What it feeds (<c>to</c>); null where not said.</param>
/// <param name="From">Whose it is; null means the shop's.</param>
/// <param name="At">Where it was written.</param>
public sealed record Device(
    string Name, Given<string> Item, Given<Place>? Place, Given<PortRange>? FedBy, Given<PortRange>? To, Given<Owner>? From, Mark At)
{
    /// <summary>Its address on the network, fixed by hand; null where it is chosen.</summary>
    public Given<NetworkAddress>? Network { get; init; }

    /// <summary>Of a processor, what somebody wants set on its outputs.</summary>
    public IReadOnlyList<OutputRow> Outputs { get; init; } = [];
}
