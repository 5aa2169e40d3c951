using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>Two protective devices in a row.</summary>
/// <param name="Farther">Where the one towards the supply is: an outlet, or the service.</param>
/// <param name="Nearer">The outlet of the one towards the load.</param>
/// <param name="Is">Whether only the nearer opens.</param>
/// <param name="RestsOn">The open questions about that.</param>
public sealed record DevicePair(SupplyPoint Farther, SupplyPoint Nearer, Selective Is, Doubts RestsOn)
{
    /// <summary>The box that the nearer is in.</summary>
    public string Box => Nearer.Device?.Name ?? Nearer.Name;
}
