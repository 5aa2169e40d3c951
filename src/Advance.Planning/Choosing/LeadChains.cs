namespace Advance.Planning;

/// <summary>Every chain of owned kinds of lead between two sockets, however many of each there are.</summary>
internal sealed class LeadChains
{
    /// <summary>More leads than this one after the other are no lead.</summary>
    public const int MostLeads = 4;

    // A shop with very many kinds of one lead gets shorter chains rather than a long wait.
    private const int MostTried = 20_000;

    private readonly List<long> totals;
    private readonly Dictionary<long, IReadOnlyList<LeadChain>> reaching = [];

    private LeadChains(IReadOnlyList<LeadChain> all)
    {
        All = all;
        totals = [.. all.Select(chain => chain.Total).Distinct().Order()];
    }

    /// <summary>Each of them once.</summary>
    public IReadOnlyList<LeadChain> All { get; }

    /// <summary>The longest of them, in millimetres; 0 where nothing leads from one socket to the other.</summary>
    public long Longest => totals.Count > 0 ? totals[^1] : 0;

    /// <summary>Finds them.</summary>
    /// <param name="kinds">What carries the right thing.</param>
    /// <param name="carries">What runs through.</param>
    /// <param name="from">The socket at the source.</param>
    /// <param name="to">The socket at the load.</param>
    public static LeadChains Find(IReadOnlyList<LeadKind> kinds, string carries, LeadPlug from, LeadPlug to)
    {
        var arrangement = new LeadArrangement(carries, from, to);
        var relevant = arrangement.Relevant(kinds);
        var found = new Dictionary<string, IReadOnlyList<LeadKind>>(StringComparer.Ordinal);
        var tried = relevant.Count;
        for (var count = 1; count <= MostLeads && tried <= MostTried; count++)
        {
            foreach (var leads in Multisets(relevant, count))
            {
                if (arrangement.Of(leads) is { } order)
                {
                    found.Add(Key(leads), order);
                }
            }

            // So many multisets of one more lead there are, at most.
            tried = (int)Math.Min(int.MaxValue, (long)tried * (relevant.Count + count) / (count + 1));
        }

        return new LeadChains([.. found.Values.Select(order => new LeadChain(order, LongestWithout(order, found)))]);
    }

    /// <summary>How far up the row of totals a length is: what stands at one step is made by the same chains.</summary>
    public int Step(long needed)
    {
        var at = totals.BinarySearch(needed);
        return at >= 0 ? at : ~at;
    }

    /// <summary>The chains that reach and of which no lead can be left out, best first: fewest joins, then shortest, then by id.</summary>
    public IReadOnlyList<LeadChain> Reaching(long needed)
    {
        var step = Step(needed);
        if (!reaching.TryGetValue(step, out var chains))
        {
            reaching[step] = chains =
            [
                .. All.Where(chain => chain.Total >= needed && chain.LongestWithout < needed)
                    .OrderBy(chain => chain.Joins)
                    .ThenBy(chain => chain.Total)
                    .ThenBy(chain => chain.Text, StringComparer.Ordinal),
            ];
        }

        return chains;
    }

    /// <summary>A chain as it was written; null where it does not exist any more or does not reach.</summary>
    public LeadChain? Written(string text, long needed) => All.FirstOrDefault(chain => chain.Text == text && chain.Total >= needed);

    private static string Key(IEnumerable<LeadKind> leads) => string.Join(LeadChain.Plus, leads.Select(lead => lead.Kind.Id).Order(StringComparer.Ordinal));

    private static long LongestWithout(IReadOnlyList<LeadKind> leads, Dictionary<string, IReadOnlyList<LeadKind>> found) =>
        leads.Select((_, index) => found.TryGetValue(Key(leads.Where((_, other) => other != index)), out var rest) ? rest.Sum(lead => lead.Millimetres) : -1).Max();

    private static IEnumerable<List<LeadKind>> Multisets(IReadOnlyList<LeadKind> kinds, int count)
    {
        var chosen = new int[count];
        while (kinds.Count > 0)
        {
            yield return [.. chosen.Select(index => kinds[index])];
            var last = count - 1;
            while (last >= 0 && chosen[last] == kinds.Count - 1)
            {
                last--;
            }

            if (last < 0)
            {
                yield break;
            }

            Array.Fill(chosen, chosen[last] + 1, last, count - last);
        }
    }
}
