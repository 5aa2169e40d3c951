using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Which outlets feed which inlets with the leads and adapters that a shop owns.</summary>
internal sealed class Mating
{
    private const string Mains = "mains";
    private const string Plug = " male";
    private const string Socket = " female";

    // From one connector to another by a lead with both, or by a lead and an adapter.
    private const int MostBridges = 2;

    private readonly Dictionary<string, HashSet<string>> bridges = new(StringComparer.Ordinal);

    private Mating()
    {
    }

    /// <summary>Looks through a stock.</summary>
    public static Mating Of(Stock stock)
    {
        var mating = new Mating();
        foreach (var cable in stock.Kinds.Values.Where(kind => IsOwned(kind) && kind.Cable?.Carries == Mains).Select(kind => kind.Cable!))
        {
            mating.Add(cable.From, cable.To);
            mating.Add(cable.To, cable.From);
        }

        return mating;
    }

    /// <summary>The inlet side of a mains lead: <c>16 A blue</c> for one with <c>16 A blue male</c>; null for what is no mains lead, or has no plug.</summary>
    public static string? PlugOf(Cable cable) => cable.Carries != Mains ? null : Ends(cable, Plug);

    /// <summary>The outlet side of a mains lead.</summary>
    public static string? SocketOf(Cable cable) => cable.Carries != Mains ? null : Ends(cable, Socket);

    /// <summary>
    /// How many leads between different connectors it takes from an outlet to an inlet: 0 where they are the same, or nobody knows one of
    /// them; null where nothing owned does it.
    /// </summary>
    public int? Bridges(string outlet, string inlet)
    {
        if (outlet.Length == 0 || inlet.Length == 0 || outlet == inlet)
        {
            return 0;
        }

        var reached = new HashSet<string>(StringComparer.Ordinal) { outlet };
        for (var count = 1; count <= MostBridges; count++)
        {
            reached = [.. reached.SelectMany(connector => bridges.GetValueOrDefault(connector) ?? [])];
            if (reached.Contains(inlet))
            {
                return count;
            }
        }

        return null;
    }

    private static bool IsOwned(Kind kind) => !kind.Owned.Is(out var owned) || owned > 0;

    private static string? Ends(Cable cable, string end) =>
        new[] { cable.From, cable.To }.Where(one => one.EndsWith(end, StringComparison.Ordinal)).Select(one => one[..^end.Length]).FirstOrDefault();

    // A lead's plug goes into an outlet, and its socket is what an inlet sees.
    private void Add(string plug, string socket)
    {
        if (!plug.EndsWith(Plug, StringComparison.Ordinal) || !socket.EndsWith(Socket, StringComparison.Ordinal))
        {
            return;
        }

        var from = plug[..^Plug.Length];
        if (!bridges.TryGetValue(from, out var reached))
        {
            bridges[from] = reached = new HashSet<string>(StringComparer.Ordinal);
        }

        reached.Add(socket[..^Socket.Length]);
    }
}
