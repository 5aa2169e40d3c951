namespace Advance.Planning;

/// <summary>The shortest ways from one point of a network to all others, by Dijkstra's algorithm.</summary>
internal sealed class ShortestWays
{
    private readonly double[] costs;
    private readonly int[] before;

    private ShortestWays(int count)
    {
        costs = new double[count];
        before = new int[count];
        Array.Fill(costs, double.PositiveInfinity);
        Array.Fill(before, -1);
    }

    /// <summary>Finds them. Of two ways that cost the same, the one found first stays; points are visited by cost, then by number.</summary>
    /// <param name="from">Where they start.</param>
    /// <param name="neighbours">Of each point; costs are 0 or more.</param>
    public static ShortestWays Find(int from, IReadOnlyList<(int To, double Cost)>[] neighbours)
    {
        var ways = new ShortestWays(neighbours.Length);
        var open = new PriorityQueue<int, (double, int)>();
        ways.costs[from] = 0;
        open.Enqueue(from, (0, from));
        while (open.TryDequeue(out var point, out var priority))
        {
            if (priority.Item1 <= ways.costs[point])
            {
                ways.GoOn(point, neighbours[point], open);
            }
        }

        return ways;
    }

    /// <summary>What the way to a point costs; without end where there is none.</summary>
    public double Cost(int point) => costs[point];

    /// <summary>The points on the way to one of them, both ends included.</summary>
    public IReadOnlyList<int> To(int point)
    {
        var way = new List<int>();
        for (var at = point; at >= 0; at = before[at])
        {
            way.Add(at);
        }

        way.Reverse();
        return way;
    }

    private void GoOn(int point, IReadOnlyList<(int To, double Cost)> neighbours, PriorityQueue<int, (double, int)> open)
    {
        foreach (var (to, step) in neighbours)
        {
            var cost = costs[point] + step;
            if (cost < costs[to])
            {
                costs[to] = cost;
                before[to] = point;
                open.Enqueue(to, (cost, to));
            }
        }
    }
}
