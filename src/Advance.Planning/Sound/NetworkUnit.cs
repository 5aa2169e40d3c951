using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A unit that is controlled over the network, or that runs software of an expected version.</summary>
/// <param name="Address">That of its piece.</param>
/// <param name="Name">Its name on paper.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Spot">Where it stands.</param>
/// <param name="HasPort">Whether it has a control port, and so wants an address.</param>
/// <param name="Fixed">The address that somebody wrote; null where none was.</param>
/// <param name="At">Where it was written.</param>
public sealed record NetworkUnit(Address Address, string Name, Kind Kind, Spot? Spot, bool HasPort, Given<NetworkAddress>? Fixed, Mark At)
{
    /// <summary>Its address on the network; null where it wants none, none is left, or the network is an open question.</summary>
    public NetworkAddress? Network { get; init; }

    /// <summary>Why that address.</summary>
    public Reason Why { get; init; } = Reason.Derived.It;

    /// <summary>The open questions behind it.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;

    /// <summary>The version expected; empty where it runs none.</summary>
    public string Software => Kind.Loudspeaker?.Software ?? "";

    /// <summary>The name of the address in the plan.</summary>
    public Address NetworkAt => Address / "network-address";
}
