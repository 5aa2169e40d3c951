namespace Advance.Domain.Gigs;

/// <summary>Power as written.</summary>
/// <param name="Distributions">Boxes that split a service into circuits.</param>
/// <param name="Circuits">Circuits fixed by hand.</param>
/// <param name="Services">Where the venue's services come out, as far as it was said.</param>
public sealed record Power(IReadOnlyList<Device> Distributions, IReadOnlyList<CircuitRow> Circuits, IReadOnlyList<ServicePlace> Services)
{
    /// <summary>Nothing said.</summary>
    public static readonly Power None = new([], [], []);
}
