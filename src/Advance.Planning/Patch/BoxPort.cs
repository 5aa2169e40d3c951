using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>One connector for sound on a stage box or a desk.</summary>
/// <param name="Port">Which.</param>
/// <param name="IsBalanced">Whether it is a balanced one, which gives 48 V to what is plugged into it.</param>
/// <param name="Connector">What plugs into it.</param>
internal sealed record BoxPort(Port Port, bool IsBalanced, string Connector)
{
    /// <summary>The signal that runs balanced.</summary>
    public const string Balanced = "mic-line";

    private const string Unbalanced = "line";

    /// <summary>All of one direction, numbered through as on the box; none where no stock describes it.</summary>
    public static IEnumerable<BoxPort> Of(PortBox box, PortKind kind)
    {
        var number = 0;
        foreach (var row in Rows(box.Kind, kind))
        {
            for (var index = 0; index < row.Count; index++)
            {
                yield return new BoxPort(new Port(box.Device.Name, kind, ++number), row.Signal == Balanced, row.Connector);
            }
        }
    }

    /// <summary>A desk, as a box of ports.</summary>
    public static PortBox Desk(Device device, Stock stock)
    {
        var kind = device.Item.Is(out var id) ? stock.Find(id) : null;
        return new PortBox(device, kind, Count(device, kind, PortKind.Input), Count(device, kind, PortKind.Output));
    }

    private static Figure<int> Count(Device device, Kind? kind, PortKind which)
    {
        int? count = kind is null || kind.Ports.Count == 0 ? null : Rows(kind, which).Sum(row => row.Count);
        return new Figure<int>(count, Doubts.Of(device.Item.Doubt), new Reason.Fixed(kind?.At ?? device.Item.At));
    }

    private static IEnumerable<PortRow> Rows(Kind? kind, PortKind which) =>
        kind?.Ports.Where(row => row.Port == which && row.Signal is Balanced or Unbalanced) ?? [];
}
