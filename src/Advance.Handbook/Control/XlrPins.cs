namespace Advance.Handbook;

/// <summary>Which pin carries what.</summary>
public static class XlrPins
{
    /// <summary>Balanced audio on three pins. Source: <see cref="Aes14.Polarity"/>, <see cref="Aes14.Connector"/>. Old gear may have pin 3 hot.</summary>
    public static IReadOnlyList<Pin> Audio { get; } = [new(1, "screen"), new(2, "hot (+)"), new(3, "cold (-)")];

    /// <summary>Digital lighting control on five pins; on three it is the first three. Source: <see cref="AnsiE111.Pins"/>. Pin 2 is the minus here.</summary>
    public static IReadOnlyList<Pin> LightingControl { get; } =
        [new(1, "common"), new(2, "data -"), new(3, "data +"), new(4, "second data -"), new(5, "second data +")];
}
