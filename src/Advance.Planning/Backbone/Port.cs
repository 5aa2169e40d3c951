using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>One connector of a named device.</summary>
/// <param name="Device">The device's name.</param>
/// <param name="Kind">Which row of connectors.</param>
/// <param name="Number">Which of them, from 1; null where the device has one, or it is not chosen yet.</param>
public sealed record Port(string Device, PortKind Kind, int? Number)
{
    /// <summary><c>SB1 in 3</c>.</summary>
    public override string ToString() => $"{Device} {Word(Kind)}{(Number is { } number ? $" {number}" : "")}";

    private static string Word(PortKind kind) => kind switch
    {
        PortKind.Input => "in",
        PortKind.Output => "out",
        PortKind.Outlet => "outlet",
        _ => "link",
    };
}
