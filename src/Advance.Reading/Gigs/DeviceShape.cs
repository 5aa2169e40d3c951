using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>One piece with a name and ports.</summary>
internal static class DeviceShape
{
    public static readonly RecordShape<Device> It = new("device", "A distribution or lighting desk.", Plain);

    public static readonly RecordShape<Device> OfSound = new("sound-device", "A console, stage box or amplifier.", OnNetwork);

    public static readonly RecordShape<Device> Processor = new("processor", "What drives loudspeakers, with what is set on its outputs.", keys =>
    {
        var device = OnNetwork(keys);
        var outputs = keys.Any("outputs", Written.Table(OutputShape.It), "What is set on its outputs.");
        return row => device(row) with { Outputs = outputs(row) };
    });

    private static Func<Row, Device> Plain(Keys keys)
    {
        var item = keys.Asked("item", Written.Name, "Its kind in the stock.");
        var place = keys.Open("place", Written.Place, "Where it stands.");
        var fedBy = keys.Open("fed-by", Written.Ports, "What feeds it.");
        var to = keys.Open("to", Written.Ports, "What it feeds.");
        var from = keys.Open("from", Written.Owner, "Whose it is; without it the shop's.");
        return row => new Device(row.Name, item(row), place(row), fedBy(row), to(row), from(row), row.At);
    }

    private static Func<Row, Device> OnNetwork(Keys keys)
    {
        var device = Plain(keys);
        var address = keys.Open("network-address", Written.As(Networks.Address), "Its address on the network; without it one is chosen.");
        return row => device(row) with { Network = address(row) };
    }
}
