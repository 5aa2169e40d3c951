namespace Advance.Planning;

/// <summary>
/// Strands and the points where a lead may change from one to another. The shortest way between two points is Dijkstra's over those points;
/// an end in the middle of a strand goes to the next point on either side.
/// </summary>
internal sealed class Network
{
    private readonly Terrain terrain;
    private readonly IReadOnlyList<Strand> strands;
    private readonly List<OnStrand> nodes = [];
    private readonly List<int>[] onStrand;
    private readonly List<(int To, double Cost)>[] neighbours;
    private readonly Dictionary<int, ShortestWays> waysFrom = [];

    /// <summary>A network of strands.</summary>
    public Network(Terrain terrain, IReadOnlyList<Strand> strands, IReadOnlyList<Tie> ties)
    {
        this.terrain = terrain;
        this.strands = strands;
        onStrand = new List<int>[strands.Count];
        foreach (var strand in strands)
        {
            onStrand[strand.Number] = [];
            foreach (var offset in Offsets(strand, ties).Distinct().Order())
            {
                onStrand[strand.Number].Add(nodes.Count);
                nodes.Add(new(strand.Number, offset));
            }
        }

        neighbours = [.. nodes.Select(_ => new List<(int, double)>())];
        ConnectAlong();
        ConnectTies(ties);
    }

    /// <summary>All strands, by number.</summary>
    public IReadOnlyList<Strand> Strands => strands;

    /// <summary>What the best way between two points of the network counts; without end where there is none.</summary>
    public double Cost(OnStrand from, OnStrand to) => Math.Min(Direct(from, to), Best(from, to).Cost);

    /// <summary>The points that the best way leads over, both ends included; null where there is none.</summary>
    public IReadOnlyList<OnStrand>? Way(OnStrand from, OnStrand to)
    {
        var best = Best(from, to);
        if (Direct(from, to) <= best.Cost)
        {
            return double.IsPositiveInfinity(Direct(from, to)) ? null : [from, to];
        }

        return [from, .. WaysFrom(best.First).To(best.Last).Select(node => nodes[node]), to];
    }

    // Along one strand, or from an edge on the deck to the same edge on the floor.
    private double Direct(OnStrand from, OnStrand to)
    {
        if (from.Strand == to.Strand)
        {
            return Along(from.Strand, from.Offset, to.Offset);
        }

        return strands[from.Strand].Twin == to.Strand
            ? Math.Min(Along(from.Strand, from.Offset, to.Offset), Along(to.Strand, from.Offset, to.Offset)) + terrain.Climb
            : double.PositiveInfinity;
    }

    private (double Cost, int First, int Last) Best(OnStrand from, OnStrand to)
    {
        var best = (Cost: double.PositiveInfinity, First: -1, Last: -1);
        foreach (var first in Beside(from))
        {
            var ways = WaysFrom(first);
            var start = Along(from.Strand, from.Offset, nodes[first].Offset);
            foreach (var last in Beside(to))
            {
                var cost = start + ways.Cost(last) + Along(to.Strand, nodes[last].Offset, to.Offset);
                if (cost < best.Cost)
                {
                    best = (cost, first, last);
                }
            }
        }

        return best;
    }

    private double Along(int strand, double from, double to) => terrain.Along(strands[strand], strands[strand].At(from), strands[strand].At(to));

    // The points next to it on its strand, one on either side.
    private IEnumerable<int> Beside(OnStrand point)
    {
        var all = onStrand[point.Strand];
        var after = all.FindIndex(node => nodes[node].Offset >= point.Offset);
        if (after < 0)
        {
            return [all[^1]];
        }

        return after == 0 ? [all[0]] : [all[after - 1], all[after]];
    }

    private ShortestWays WaysFrom(int node)
    {
        if (!waysFrom.TryGetValue(node, out var ways))
        {
            waysFrom[node] = ways = ShortestWays.Find(node, neighbours);
        }

        return ways;
    }

    // Where a lead may climb to an edge it may also climb down again, so both levels have the same points.
    private static IEnumerable<double> Offsets(Strand strand, IReadOnlyList<Tie> ties) =>
    [
        0,
        Math.Round(strand.Length, 6, MidpointRounding.AwayFromZero),
        .. ties.SelectMany(tie => new[] { tie.One, tie.Other })
            .Where(point => point.Strand == strand.Number || point.Strand == strand.Twin)
            .Select(point => Math.Round(point.Offset, 6, MidpointRounding.AwayFromZero)),
    ];

    private void ConnectAlong()
    {
        foreach (var strand in strands)
        {
            var all = onStrand[strand.Number];
            for (var index = 1; index < all.Count; index++)
            {
                Connect(all[index - 1], all[index], Along(strand.Number, nodes[all[index - 1]].Offset, nodes[all[index]].Offset));
            }

            if (strand is { IsOnDeck: true, Twin: { } twin })
            {
                for (var index = 0; index < all.Count; index++)
                {
                    Connect(all[index], onStrand[twin][index], terrain.Climb);
                }
            }
        }
    }

    private void ConnectTies(IReadOnlyList<Tie> ties)
    {
        foreach (var tie in ties)
        {
            Connect(NodeAt(tie.One), NodeAt(tie.Other), tie.Cost);
        }
    }

    private int NodeAt(OnStrand point)
    {
        var offset = Math.Round(point.Offset, 6, MidpointRounding.AwayFromZero);
        return onStrand[point.Strand].Single(node => nodes[node].Offset == offset);
    }

    private void Connect(int one, int other, double cost)
    {
        neighbours[one].Add((other, cost));
        neighbours[other].Add((one, cost));
    }
}
