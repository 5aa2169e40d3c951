using System.Globalization;
using Advance.Domain.Facts;

namespace Advance.Reading.Phrases;

/// <summary>Networks and addresses on them.</summary>
internal static class Networks
{
    private const int LeastBits = 8;
    private const int MostBits = 30;
    private const string Part = "(?:25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9]?[0-9])";
    private const string Dotted = $@"{Part}\.{Part}\.{Part}\.{Part}";

    /// <summary>The address of one unit.</summary>
    public static readonly Phrase<NetworkAddress> Address = new(
        "network-address", "an address on a network", Dotted, ["192.168.10.31", "10.0.0.5"], ReadAddress);

    /// <summary>A network, with how many bits its addresses share.</summary>
    public static readonly Phrase<Subnet> Subnet = new(
        "subnet", "a network and how many bits are its own", $"{Dotted}/(?:[89]|[12][0-9]|30)", ["192.168.10.0/24", "10.20.0.0/16"], ReadSubnet);

    private static bool ReadAddress(Cursor cursor, out NetworkAddress value)
    {
        var read = NetworkAddress.Read(cursor.Text[cursor.At..]);
        value = read ?? default;
        cursor.At = read is null ? cursor.At : cursor.Text.Length;
        return read is not null;
    }

    private static bool ReadSubnet(Cursor cursor, out Subnet value)
    {
        value = default;
        var parts = cursor.Text[cursor.At..].Split('/');
        if (parts.Length != 2 || NetworkAddress.Read(parts[0]) is not { } address || !ReadBits(parts[1], out var bits))
        {
            return false;
        }

        value = new(address, bits);
        cursor.At = cursor.Text.Length;
        return true;
    }

    private static bool ReadBits(string text, out int bits) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out bits)
        && bits is >= LeastBits and <= MostBits
        && bits.ToString(CultureInfo.InvariantCulture) == text;
}
