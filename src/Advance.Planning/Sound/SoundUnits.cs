using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>Everything that a signal runs through, by name: devices and boxes. Knows connectors and how high they are.</summary>
/// <param name="devices">As placed.</param>
/// <param name="stacks">As built.</param>
internal sealed class SoundUnits(IReadOnlyList<SoundDevice> devices, IReadOnlyList<StackPlan> stacks)
{
    // A lead up to a box that nobody measured is taken as long as to one of a usual height.
    private const double UsualHeight = 0.6;

    private readonly Dictionary<string, SoundDevice> byName = devices.DistinctBy(device => device.Name, StringComparer.Ordinal)
        .ToDictionary(device => device.Name, StringComparer.Ordinal);

    private readonly Dictionary<string, (StackPlan Stack, StackedBox Box)> boxes = stacks
        .SelectMany(stack => stack.Boxes.Select(box => (Stack: stack, Box: box)))
        .DistinctBy(found => found.Box.Piece.Name, StringComparer.Ordinal)
        .ToDictionary(found => found.Box.Piece.Name, StringComparer.Ordinal);

    /// <summary>All names, in ordinal order.</summary>
    public IEnumerable<string> Names => byName.Keys.Concat(boxes.Keys).Order(StringComparer.Ordinal);

    /// <summary>The device of that name; null where there is none.</summary>
    public SoundDevice? Device(string name) => byName.GetValueOrDefault(name);

    /// <summary>The box of that name and its stack; null where there is none.</summary>
    public (StackPlan Stack, StackedBox Box)? Box(string name) => boxes.TryGetValue(name, out var found) ? found : null;

    /// <summary>The thing of that name; null where there is none.</summary>
    public Piece? Piece(string name) => Device(name)?.Piece ?? Box(name)?.Box.Piece;

    /// <summary>A port without its number where the device has only one of the kind, so that one connector has one name.</summary>
    public Port Plain(Port port) => Piece(port.Device) is { } piece && port.Number == 1 && Box(port.Device) is not null && Signals.Count(piece.Kind, port.Kind) == 1
        ? port with { Number = null }
        : port;

    /// <summary>Where a connection ends.</summary>
    /// <param name="port">The connector.</param>
    /// <param name="signal">What runs through; where the device has no port for that, nobody knows what plugs in.</param>
    public LinkEnd End(Port port, string signal)
    {
        var piece = Piece(port.Device);
        var connector = piece?.Kind?.Ports.FirstOrDefault(row => row.Port == port.Kind && row.Signal == signal)?.Connector ?? "";
        return new LinkEnd(Plain(port), connector, piece?.Spot, Box(port.Device) is { } found ? HeightOf(found.Stack, found.Box) : 0);
    }

    /// <summary>What a unit takes: the signal of its inputs; balanced sound where no stock says.</summary>
    public string Takes(string name) => Signals.Row(Piece(name)?.Kind, PortKind.Input)?.Signal ?? Signals.MicLine;

    // Connectors are in the middle of a box's back.
    private static double HeightOf(StackPlan stack, StackedBox box) => stack.IsHang ? stack.LeadHeights[box.Position - 1] :
        stack.Boxes.TakeWhile(lower => lower.Position < box.Position).Sum(Metres) + (Metres(box) / 2);

    private static double Metres(StackedBox box) => box.Height.Value?.Meters ?? UsualHeight;
}
