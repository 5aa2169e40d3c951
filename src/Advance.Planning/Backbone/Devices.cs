using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Stands one-off devices in their places: desks, stage boxes, processors, distributions.</summary>
internal static class Devices
{
    /// <summary>Asks for each device and draws it.</summary>
    public static void Stand(IEnumerable<Device> devices, Pieces pieces, Drawn drawn)
    {
        foreach (var device in devices)
        {
            var piece = pieces.Ask(pieces.At(device.Name), device.Name, device.Item.Or("TBC"), device.From, drawn.Find(device.Place), device.At);
            drawn.Add(piece.Address, device.Name, Look.Box, device.Place, Footprint.Of(piece.Kind));
        }
    }
}
