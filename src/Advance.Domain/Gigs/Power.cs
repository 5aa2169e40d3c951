using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>Power as written.</summary>
/// <param name="Distributions">Boxes that split a service into circuits.</param>
/// <param name="Circuits">Circuits fixed by hand.</param>
/// <param name="Services">Where the venue's services come out, as far as it was said.</param>
public sealed record Power(IReadOnlyList<Device> Distributions, IReadOnlyList<CircuitRow> Circuits, IReadOnlyList<ServicePlace> Services)
{
    /// <summary>Structures that stand with electrical things on them, and to what each is bonded; in the order written.</summary>
    public IReadOnlyList<BondRow> Bonds { get; init; } = [];

    /// <summary>How the earths of several services are kept from each other, or joined; null where nobody says.</summary>
    public Given<string>? EarthsJoined { get; init; }

    /// <summary>Nothing said.</summary>
    public static readonly Power None = new([], [], []);
}
