namespace Advance.Sheets.Drawings;

/// <summary>
/// Sets a signal graph in layers from left to right: each node one layer after the last of those that feed it, in each layer in the order
/// that crosses least by the means of their neighbours, and each edge with a place of its own in every layer that it passes.
/// </summary>
internal sealed class SignalLayers
{
    private const int Sweeps = 6;
    private const double Between = 5;
    private const double TooLevel = 0.4;

    private readonly List<List<SignalPlace>> layers = [];
    private readonly List<SignalStep> steps = [];

    private SignalLayers()
    {
    }

    /// <summary>From left to right; in each from the top.</summary>
    public IReadOnlyList<IReadOnlyList<SignalPlace>> Layers => layers;

    /// <summary>Every part of every edge.</summary>
    public IReadOnlyList<SignalStep> Steps => steps;

    /// <summary>Sets a graph; nodes without an edge are left out.</summary>
    /// <param name="nodes">Some of them may have no edge.</param>
    /// <param name="graph">Their edges.</param>
    public static SignalLayers Of(IReadOnlyList<SignalNode> nodes, IReadOnlyList<SignalEdge> graph)
    {
        var set = new SignalLayers();
        set.Place(nodes, graph);
        set.Order();
        set.Settle();
        return set;
    }

    private void Place(IReadOnlyList<SignalNode> nodes, IReadOnlyList<SignalEdge> graph)
    {
        var edges = graph.Where(edge => edge.From != edge.To).ToList();
        var used = nodes.Where(node => edges.Exists(edge => edge.From == node.Id || edge.To == node.Id)).ToList();
        var level = Levels(used, edges);
        var places = used.ToDictionary(node => node.Id, node => At(new SignalPlace(node.Id, node, level[node.Id])));
        foreach (var edge in edges.Where(edge => places.ContainsKey(edge.From) && places.ContainsKey(edge.To) && level[edge.From] < level[edge.To]))
        {
            var from = places[edge.From];
            for (var layer = from.Layer + 1; layer < level[edge.To]; layer++)
            {
                var passing = At(new SignalPlace($"{edge.From}>{edge.To}>{layer}", null, layer));
                Join(from, passing, []);
                from = passing;
            }

            Join(from, places[edge.To], edge.Label);
        }
    }

    private SignalPlace At(SignalPlace place)
    {
        while (layers.Count <= place.Layer)
        {
            layers.Add([]);
        }

        layers[place.Layer].Add(place);
        return place;
    }

    private void Join(SignalPlace from, SignalPlace to, IReadOnlyList<string> label)
    {
        var step = new SignalStep(from, to, label);
        from.Out.Add(step);
        to.In.Add(step);
        steps.Add(step);
    }

    // The longest way from a source. What goes round in a circle is cut where it comes back: no way is longer than there are nodes.
    private static Dictionary<string, int> Levels(List<SignalNode> nodes, List<SignalEdge> edges)
    {
        var level = nodes.ToDictionary(node => node.Id, _ => 0, StringComparer.Ordinal);
        var forward = Forward(nodes, edges);
        for (var round = 0; round < nodes.Count; round++)
        {
            foreach (var edge in forward)
            {
                level[edge.To] = Math.Max(level[edge.To], level[edge.From] + 1);
            }
        }

        return level;
    }

    private static List<SignalEdge> Forward(List<SignalNode> nodes, List<SignalEdge> edges)
    {
        var kept = new List<SignalEdge>();
        foreach (var edge in edges.Where(edge => nodes.Exists(node => node.Id == edge.From) && nodes.Exists(node => node.Id == edge.To)))
        {
            if (!Reaches(edge.To, edge.From, kept))
            {
                kept.Add(edge);
            }
        }

        return kept;
    }

    private static bool Reaches(string from, string to, List<SignalEdge> edges)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var next = new Queue<string>([from]);
        while (next.TryDequeue(out var at))
        {
            if (at == to)
            {
                return true;
            }

            if (seen.Add(at))
            {
                foreach (var edge in edges.Where(edge => edge.From == at))
                {
                    next.Enqueue(edge.To);
                }
            }
        }

        return false;
    }

    private void Order()
    {
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            var isForward = sweep % 2 == 0;
            foreach (var layer in isForward ? layers : Enumerable.Reverse(layers))
            {
                var mean = layer.Select((place, index) => (place, Key: Mean(place, isForward) ?? index, index)).ToList();
                layer.Clear();
                layer.AddRange(mean.OrderBy(one => one.Key).ThenBy(one => one.index).Select(one => one.place));
            }
        }
    }

    private double? Mean(SignalPlace place, bool ofFeeds)
    {
        var neighbours = ofFeeds ? place.In.ConvertAll(step => step.From) : place.Out.ConvertAll(step => step.To);
        return neighbours.Count == 0 ? null : neighbours.Average(other => layers[other.Layer].IndexOf(other));
    }

    // From left to right each stands as level with what feeds it as those above it let it.
    private void Settle()
    {
        foreach (var layer in layers)
        {
            var free = double.NegativeInfinity;
            foreach (var place in layer)
            {
                var wanted = place.In.Count > 0 ? place.In.Average(step => step.From.Middle) - (place.Height / 2) : double.IsInfinity(free) ? 0 : free;
                place.Top = Math.Max(free, wanted);
                free = place.Top + place.Height + Between;
            }

            Centre(layer);
        }

        foreach (var place in layers.SelectMany(layer => layer))
        {
            Ends(place);
        }

        foreach (var step in steps.Where(step => step.From.Out.Count == 1 && step.EndY > step.From.Top + 1 && step.EndY < step.From.Top + step.From.Height - 1))
        {
            step.StartY = step.EndY;
        }

        for (var layer = 0; layer + 1 < layers.Count; layer++)
        {
            Lanes([.. steps.Where(step => step.From.Layer == layer)]);
        }
    }

    // Those above push those below down: the layer goes up again by the mean of it.
    private static void Centre(List<SignalPlace> layer)
    {
        var fed = layer.Where(place => place.In.Count > 0).ToList();
        if (fed.Count == 0)
        {
            return;
        }

        var down = fed.Average(place => place.Middle - place.In.Average(step => step.From.Middle));
        layer.ForEach(place => place.Top -= down);
    }

    private void Ends(SignalPlace place)
    {
        place.In.Sort((a, b) => IndexOf(a.From).CompareTo(IndexOf(b.From)));
        place.Out.Sort((a, b) => IndexOf(a.To).CompareTo(IndexOf(b.To)));
        var y = place.Top + ((place.Height - place.In.Sum(step => step.Room)) / 2);
        foreach (var step in place.In)
        {
            y += step.Room;
            step.EndY = place.Node is null ? place.Middle : y - 1;
        }

        for (var index = 0; index < place.Out.Count; index++)
        {
            place.Out[index].StartY = place.Node is null ? place.Middle : place.Top + (place.Height * (index + 0.5) / place.Out.Count);
        }
    }

    private int IndexOf(SignalPlace place) => layers[place.Layer].IndexOf(place);

    // Those that go down take the lanes from the right, those that go up from the left, so that they do not cross each other's ends.
    private static void Lanes(List<SignalStep> between)
    {
        PartEnds(between);
        var lane = 0;
        foreach (var step in between.Where(step => step.EndY < step.StartY).OrderBy(step => step.StartY)
            .Concat(between.Where(step => step.EndY > step.StartY).OrderByDescending(step => step.StartY)))
        {
            step.Lane = lane++;
        }
    }

    // An end that lies level with the beginning of another would seem to go on from it.
    private static void PartEnds(List<SignalStep> between)
    {
        foreach (var step in between.Where(step => !step.StartY.Equals(step.EndY)))
        {
            if (between.Exists(other => other != step && Math.Abs(other.StartY - step.EndY) < TooLevel))
            {
                step.EndY += TooLevel;
            }
        }
    }
}
