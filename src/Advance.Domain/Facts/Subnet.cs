namespace Advance.Domain.Facts;

/// <summary>The addresses of one network: <c>192.168.10.0/24</c>.</summary>
/// <param name="Within">Any address of it.</param>
/// <param name="Bits">How many of the 32 bits all its addresses share, 8 to 30.</param>
public readonly record struct Subnet(NetworkAddress Within, int Bits)
{
    /// <summary>How many units it has addresses for: all but the first, which is the network, and the last, which is everybody.</summary>
    public int Count => (1 << (32 - Bits)) - 2;

    /// <summary>Its first address, which no unit has.</summary>
    public NetworkAddress First => new(Within.Number & ~(uint)((1L << (32 - Bits)) - 1));

    /// <summary>The address of a unit, 1 to <see cref="Count"/>.</summary>
    public NetworkAddress Of(int unit) => new(First.Number + (uint)unit);

    /// <summary>Whether a unit may have this address.</summary>
    public bool Holds(NetworkAddress address) => address.Number > First.Number && address.Number - First.Number <= (uint)Count;

    /// <summary><c>192.168.10.0/24</c>.</summary>
    public override string ToString() => $"{First}/{Bits}";
}
