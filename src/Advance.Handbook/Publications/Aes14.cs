using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>AES14 and IEC 61076-2-103, the XLR connector: polarity and pins.</summary>
public static class Aes14
{
    /// <summary>Pin 2 is hot.</summary>
    public static readonly Publication Polarity = new("AES14", "1992", "pin 2 hot", Standing.Read);

    /// <summary>The connector itself; the number is from memory.</summary>
    public static readonly Publication Connector = new("IEC 61076-2-103", "", "", Standing.FromMemory);
}
