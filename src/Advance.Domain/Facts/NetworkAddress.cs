namespace Advance.Domain.Facts;

/// <summary>The address of a unit on a network, of four numbers from 0 to 255: <c>192.168.10.31</c>.</summary>
/// <param name="Number">All four in one, the first in the highest place.</param>
public readonly record struct NetworkAddress(uint Number) : IComparable<NetworkAddress>
{
    /// <summary>From its four numbers.</summary>
    public static NetworkAddress Of(byte a, byte b, byte c, byte d) => new(((uint)a << 24) | ((uint)b << 16) | ((uint)c << 8) | d);

    /// <summary>Reads one that was printed; null for what is none. A number has no nought in front.</summary>
    public static NetworkAddress? Read(string text)
    {
        var parts = text.Split('.');
        uint number = 0;
        foreach (var part in parts)
        {
            if (parts.Length != 4 || part.Length is 0 or > 3 || !part.All(char.IsAsciiDigit) || (part.Length > 1 && part[0] == '0'))
            {
                return null;
            }

            var value = part.Aggregate(0u, (sum, digit) => (sum * 10) + (uint)(digit - '0'));
            if (value > 255)
            {
                return null;
            }

            number = (number << 8) | value;
        }

        return new NetworkAddress(number);
    }

    /// <summary>Lower numbers come first.</summary>
    public int CompareTo(NetworkAddress other) => Number.CompareTo(other.Number);

    /// <summary><c>192.168.10.31</c>.</summary>
    public override string ToString() => $"{Number >> 24}.{(Number >> 16) & 255}.{(Number >> 8) & 255}.{Number & 255}";
}
