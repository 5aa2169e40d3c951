using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>
/// Puts together what hangs on one outlet: the boxes of a stack, linked from the floor up, of a hang from the top down, and the fixtures of one position, in order; all
/// else by itself. Common practice, no source: a small stack runs off one circuit. A circuit fixed by hand that names several things links
/// those too.
/// </summary>
internal static class PowerChains
{
    /// <summary>All chains, in the order of their addresses, and the circuits fixed by hand that name nothing, or what cannot be linked.</summary>
    public static (IReadOnlyList<PowerChain> Chains, IReadOnlyList<GivenUpCircuit> GivenUp) Of(Gig gig, IReadOnlyList<PowerLoad> loads)
    {
        var groups = Groups(gig);
        var chains = loads
            .GroupBy(load => groups.GetValueOrDefault(load.Address, (load.Name, load.Address)))
            .SelectMany(group => Linked([.. group]).Select((part, index) => ChainOf(group.Key, part, index)));
        var rows = new ChainRows(chains);
        foreach (var row in gig.Power.Circuits.Where(row => !IsFeed(row, gig)))
        {
            rows.Fix(row);
        }

        foreach (var row in HoistRows(gig, loads).Where(row => !gig.Power.Circuits.Any(one => Names(one, row.Feeds))))
        {
            rows.Fix(row);
        }

        return ([.. rows.Chains.OrderBy(chain => chain.Address)], rows.GivenUp);
    }

    // A hoist that is controlled with a box of circuits is fed by it.
    private static IEnumerable<CircuitRow> HoistRows(Gig gig, IReadOnlyList<PowerLoad> loads)
    {
        var controls = gig.Rigging.Trusses.SelectMany(truss => truss.Picks).Select(pick => (pick.At, pick.Group))
            .Concat(gig.Sound.Hangs.SelectMany(hang => hang.Flown!.Picks).Select(pick => (pick.At, pick.Group)))
            .Where(one => gig.Power.Distributions.Any(device => string.Equals(device.Name, one.Group, StringComparison.OrdinalIgnoreCase)))
            .DistinctBy(one => one.At).ToDictionary(one => one.At, one => one.Group);
        return from load in loads
               where load.Piece?.Kind?.Hoist is not null && controls.ContainsKey(load.At)
               select new CircuitRow(controls[load.At], Number: null, load.Name, "", load.At);
    }

    private static bool Names(CircuitRow row, string load) =>
        row.Feeds.Split(',', StringSplitOptions.TrimEntries).Contains(load, StringComparer.OrdinalIgnoreCase);

    private static bool IsFeed(CircuitRow row, Gig gig) =>
        gig.Power.Distributions.Any(device => string.Equals(device.Name, row.Feeds.Trim(), StringComparison.OrdinalIgnoreCase));

    private static Dictionary<Address, (string Name, Address Address)> Groups(Gig gig)
    {
        var groups = new Dictionary<Address, (string Name, Address Address)>();
        foreach (var (stack, name) in gig.Sound.Piles.SelectMany(stack => Mirrored.Each(stack.Name, stack.Sides).Select(one => (stack, one.Name))))
        {
            var address = Address.Of("sound") / name;
            for (var position = 1; position <= stack.Boxes.Sum(counted => counted.Count); position++)
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

    // A unit without a link outlet, or with another connector than the next one's inlet, ends its chain; so does one that would be too much.
    private static IEnumerable<List<PowerLoad>> Linked(IReadOnlyList<PowerLoad> loads)
    {
        var part = new List<PowerLoad>();
        foreach (var load in loads)
        {
            if (part.Count > 0 && (!ChainRows.Links(part[^1], load) || IsTooMuch([.. part, load])))
            {
                yield return part;
                part = [];
            }

            part.Add(load);
        }

        yield return part;
    }

    // Magnitudes, in use: no sum of phasors is more. What nobody knows is left to the rules.
    private static bool IsTooMuch(List<PowerLoad> chain)
    {
        var draws = chain.ConvertAll(load => load.InUse.Value?.Amperes ?? 0);
        return chain.SkipLast(1).Index().Any(one => one.Item.LinkCarries.Value is { } carries && draws.Skip(one.Index + 1).Sum() > carries.Amperes)
            || (Connectors.Rating(chain[0].Inlet, Reason.Derived.It).Value is { } inlet && draws.Sum() > inlet.Amperes);
    }

    private static PowerChain ChainOf((string Name, Address Address) group, List<PowerLoad> loads, int index)
    {
        var (name, address) = index == 0 ? group : ($"{group.Name} {index + 1}", group.Address / (index + 1));
        return new PowerChain(address, name, loads, Row: null);
    }
}
