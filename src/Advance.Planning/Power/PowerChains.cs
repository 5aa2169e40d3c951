using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>
/// Puts together what hangs on one outlet: the boxes of a stack, linked from the floor up, and the fixtures of one position, in order; all
/// else by itself. Common practice, no source: a small stack runs off one circuit.
/// </summary>
internal static class PowerChains
{
    /// <summary>All chains, in the order of their addresses.</summary>
    public static IReadOnlyList<PowerChain> Of(Gig gig, IReadOnlyList<PowerLoad> loads)
    {
        var groups = Groups(gig);
        return
        [
            .. loads
                .GroupBy(load => groups.GetValueOrDefault(load.Address, (load.Name, load.Address)))
                .SelectMany(group => Linked([.. group]).Select((part, index) => ChainOf(group.Key, part, index, gig)))
                .OrderBy(chain => chain.Address),
        ];
    }

    private static Dictionary<Address, (string Name, Address Address)> Groups(Gig gig)
    {
        var groups = new Dictionary<Address, (string Name, Address Address)>();
        foreach (var (stack, name) in gig.Sound.Stacks.SelectMany(stack => Mirrored.Each(stack.Name, stack.Sides).Select(one => (stack, one.Name))))
        {
            var address = Address.Of("sound") / name;
            for (var position = 1; position <= stack.FromFloorUp.Sum(counted => counted.Count); position++)
            {
                groups[address / position] = (name, address);
            }
        }

        foreach (var row in gig.Lighting.Fixtures)
        {
            for (var number = row.Numbers.First; number <= row.Numbers.Last; number++)
            {
                groups[Address.Of("lighting") / "fixture" / number] = (row.Position, Address.Of("lighting") / row.Position);
            }
        }

        return groups;
    }

    // A unit without a link outlet, or with another connector than the next one's inlet, ends its chain.
    private static IEnumerable<List<PowerLoad>> Linked(IReadOnlyList<PowerLoad> loads)
    {
        var part = new List<PowerLoad>();
        foreach (var load in loads)
        {
            if (part.Count > 0 && (part[^1].Link.Length == 0 || part[^1].Link != load.Inlet))
            {
                yield return part;
                part = [];
            }

            part.Add(load);
        }

        yield return part;
    }

    private static PowerChain ChainOf((string Name, Address Address) group, List<PowerLoad> loads, int index, Gig gig)
    {
        var (name, address) = index == 0 ? group : ($"{group.Name} {index + 1}", group.Address / (index + 1));
        return new PowerChain(address, name, loads, gig.Power.Circuits.FirstOrDefault(row => Means(row.Feeds, name, loads)));
    }

    private static bool Means(string feeds, string name, List<PowerLoad> loads) =>
        string.Equals(feeds.Trim(), name, StringComparison.OrdinalIgnoreCase)
        || (loads.Count == 1 && string.Equals(feeds.Trim(), loads[0].Piece?.Name, StringComparison.OrdinalIgnoreCase));
}
