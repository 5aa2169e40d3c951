using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>One piece with a name and ports.</summary>
internal static class DeviceShape
{
    public static readonly RecordShape<Device> It = new("device", "A console, stage box, processor, distribution or lighting desk.", keys =>
    {
        var item = keys.Asked("item", Written.Name, "Its kind in the stock.");
        var place = keys.Open("place", Written.Place, "Where it stands.");
        var fedBy = keys.Open("fed-by", Written.Ports, "What feeds it.");
        var to = keys.Open("to", Written.Ports, "What it feeds.");
        var from = keys.Open("from", Written.Owner, "Whose it is; without it the shop's.");
        return row => new Device(row.Name, item(row), place(row), fedBy(row), to(row), from(row), row.At);
    });
}
