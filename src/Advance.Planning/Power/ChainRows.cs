using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Gives chains to the circuits fixed by hand that name them. A row of several names makes one chain of them, in that order.</summary>
/// <param name="made">The chains as they come.</param>
internal sealed class ChainRows(IEnumerable<PowerChain> made)
{
    /// <summary>Names every wedge there is.</summary>
    public const string Wedges = "wedges";

    private readonly List<PowerChain> chains = [.. made];
    private readonly List<GivenUpCircuit> givenUp = [];

    /// <summary>The chains as they are now.</summary>
    public IReadOnlyList<PowerChain> Chains => chains;

    /// <summary>Rows that could not be kept.</summary>
    public IReadOnlyList<GivenUpCircuit> GivenUp => givenUp;

    /// <summary>Whether one unit hands the mains on to another.</summary>
    public static bool Links(PowerLoad one, PowerLoad next) => one.Link.Length > 0 && one.Link == next.Inlet;

    /// <summary>Finds what a row names, links it, and notes that the row feeds it.</summary>
    public void Fix(CircuitRow row)
    {
        var named = Named(row.Feeds.Trim());
        var names = named.Count > 0 ? [] : row.Feeds.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var name in names.Length > 1 ? names : [])
        {
            named.AddRange(Named(name).Except(named));
        }

        if (named.Count == 0)
        {
            givenUp.Add(new GivenUpCircuit(row, GivenUpReason.NamesNothing));
            return;
        }

        var free = named.Where(chain => chain.Row is null).ToList();
        if (free.Count < named.Count)
        {
            givenUp.Add(new GivenUpCircuit(row, GivenUpReason.FixedBefore));
        }

        if (free.Count > 0)
        {
            Join(row, free);
        }
    }

    private List<PowerChain> Named(string name)
    {
        if (Same(name, Wedges))
        {
            return [.. chains.Where(chain => chain.First.Use == PowerUse.Monitor && chain.First.Link.Length > 0).OrderBy(chain => chain.First.Spot?.X ?? double.MaxValue).ThenBy(chain => chain.Address)];
        }

        var exact = chains.Where(chain => Same(name, chain.Name)).ToList();
        return exact.Count > 0 ? exact : [.. chains.Where(chain => chain.Loads.Count == 1 && Same(name, chain.First.Piece?.Name)).Take(1)];
    }

    private static bool Same(string one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    // What cannot be linked behind the rest stays by itself.
    private void Join(CircuitRow row, List<PowerChain> parts)
    {
        var loads = parts[0].Loads.ToList();
        var left = new List<string>();
        chains.Remove(parts[0]);
        foreach (var part in parts.Skip(1))
        {
            if (Links(loads[^1], part.First))
            {
                loads.AddRange(part.Loads);
                chains.Remove(part);
            }
            else
            {
                left.Add(part.Name);
            }
        }

        chains.Add(new PowerChain(parts[0].Address, parts.Count > 1 && loads.Count > parts[0].Loads.Count ? row.Feeds.Trim() : parts[0].Name, loads, row));
        if (left.Count > 0)
        {
            givenUp.Add(new GivenUpCircuit(row, GivenUpReason.NotLinked, string.Join(", ", left)));
        }
    }
}
