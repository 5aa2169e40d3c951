using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>The network that units with a control port are on.</summary>
internal static class NetworkShape
{
    public static readonly RecordShape<Network> It = new("network", "The network that units with a control port are on.", keys =>
    {
        var subnet = keys.Asked("subnet", Written.As(Networks.Subnet), "Its addresses, and how many bits they share.");
        return row => new Network(subnet(row));
    });
}
