using System.Globalization;
using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>One connector of a named device.</summary>
/// <param name="Device">The device's name.</param>
/// <param name="Kind">Which row of connectors.</param>
/// <param name="Number">Which of them, from 1; null where the device has one, or it is not chosen yet.</param>
public sealed record Port(string Device, PortKind Kind, int? Number)
{
    /// <summary>Of several that come out on one connector, the last; null where it is one.</summary>
    public int? Last { get; init; }

    /// <summary><c>SB1 in 3</c>, <c>PD1 outlet 1-6</c>.</summary>
    public override string ToString() => $"{Device} {Word(Kind)}{(Number is { } number ? $" {number}" : "")}{(Last is { } last ? $"-{last}" : "")}";

    /// <summary>Whether it is the one of that index, from 0, of ports that somebody wrote; what they left open fits any.</summary>
    public bool IsIn(PortRange written, int index) =>
        Device == written.Device
        && (written.Kind is null || written.Kind == Kind)
        && (written.Numbers is not { } numbers || Number == numbers.First + index);

    /// <summary>Reads a port that was printed; null for what is none.</summary>
    public static Port? Read(string text)
    {
        var words = text.Split(' ');
        var number = words.Length > 2 && int.TryParse(words[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var read) ? read : (int?)null;
        var kindAt = words.Length - (number is null ? 1 : 2);
        PortKind? kind = kindAt < 1 ? null : words[kindAt] switch
        {
            "in" => PortKind.Input,
            "out" => PortKind.Output,
            "outlet" => PortKind.Outlet,
            "link" => PortKind.Link,
            _ => null,
        };
        return kind is { } known ? new Port(string.Join(' ', words[..kindAt]), known, number) : null;
    }

    private static string Word(PortKind kind) => kind switch
    {
        PortKind.Input => "in",
        PortKind.Output => "out",
        PortKind.Outlet => "outlet",
        _ => "link",
    };
}
