using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>
/// What is written on the leads of each run, made of names so that it stays: a line is called after the input it goes into
/// (<c>SB1-12</c>), a return or a circuit after the port it comes out of (<c>SB1-out-3</c>, <c>PD1-3</c>), what is linked on from there
/// after the same with its place in the chain (<c>PD1-3-2</c>), a feeder after what it feeds (<c>PD1-feed</c>), a network lead after both
/// its ends (<c>SB1-FOH</c>).
/// </summary>
internal sealed class RunLabels
{
    private readonly IReadOnlySet<string> distributions;
    private readonly ILookup<(string Carries, string Device), Link> into;
    private readonly Dictionary<Address, string> labels = [];

    /// <summary>Labels links, each once; where two would have the same, those after the first get a letter.</summary>
    /// <param name="links">In the order of their addresses.</param>
    /// <param name="distributions">Names of the distributions.</param>
    public RunLabels(IEnumerable<Link> links, IReadOnlySet<string> distributions)
    {
        var all = links.ToList();
        this.distributions = distributions;
        into = all.ToLookup(link => (link.Carries, link.To.Port.Device));
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var link in all)
        {
            var label = Label(link);
            var free = label;
            for (var number = 2; !taken.Add(free); number++)
            {
                free = $"{label}{Letters(number)}";
            }

            labels[link.Address] = free;
        }
    }

    /// <summary>The label of a link.</summary>
    public string Of(Link link) => labels[link.Address];

    private string Label(Link link)
    {
        var (first, place) = (link, 1);
        var seen = new HashSet<Address>();
        while (Before(first) is { } before)
        {
            if (!seen.Add(first.Address))
            {
                // A ring has no beginning.
                return Own(link);
            }

            (first, place) = (before, place + 1);
        }

        return place == 1 ? Own(link) : $"{Own(first)}-{place}";
    }

    private string Own(Link link)
    {
        var (from, to) = (link.From.Port, link.To.Port);
        return (from.Number, to.Number) switch
        {
            _ when IsFeeder(link) => $"{to.Device}-feed",
            _ when link.Carries == "network" => $"{from.Device}-{to.Device}",
            ({ } outlet, _) when from.Kind == PortKind.Outlet => $"{from.Device}-{outlet}",
            (_, { } input) => $"{to.Device}-{input}",
            ({ } output, null) => $"{from.Device}-out-{output}",
            _ => $"{from.Device}-{to.Device}",
        };
    }

    // What comes into the device that this link goes on from; null where nothing does, or it has a name of its own.
    private Link? Before(Link link) =>
        IsFeeder(link) || link.Carries == "network" || link is not { From.Port.Number: null, To.Port.Number: null }
            ? null
            : into[(link.Carries, link.From.Port.Device)].FirstOrDefault();

    private bool IsFeeder(Link link) => link.Carries == "mains" && distributions.Contains(link.To.Port.Device);

    private static string Letters(int number) => number <= 26 ? $"{(char)('a' + number - 1)}" : $"-{number}";
}
