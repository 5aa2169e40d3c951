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
        var forms = LeadForm.Of(relevant);
        var found = new List<LeadChain>();
        var tried = relevant.Count;
        for (var count = 1; count <= MostLeads && tried <= MostTried; count++)
        {
            foreach (var order in Multisets(forms, count).Select(arrangement.Of).OfType<IReadOnlyList<LeadForm>>())
            {
                IReadOnlyList<int> spare = [.. Enumerable.Range(0, count).Where(at => arrangement.Of([.. order.Take(at), .. order.Skip(at + 1)]) is not null)];
                found.AddRange(Fill(order, new LeadKind[count], 0).Select(leads => new LeadChain(leads, LongestWithout(leads, spare))));
            }

            // So many multisets of one more lead there are, at most.
            tried = (int)Math.Min(int.MaxValue, (long)tried * (relevant.Count + count) / (count + 1));
        }

        return new LeadChains(found);
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

    // Of leads of one form the longer lies nearer the source; so every choice of leads comes once.
    private static IEnumerable<LeadKind[]> Fill(IReadOnlyList<LeadForm> order, LeadKind[] leads, int at)
    {
        if (at == order.Count)
        {
            return [[.. leads]];
        }

        var before = at - 1;
        while (before >= 0 && order[before] != order[at])
        {
            before--;
        }

        var kinds = before < 0 ? order[at].Kinds : order[at].Kinds.SkipWhile(kind => !ReferenceEquals(kind, leads[before]));
        return kinds.SelectMany(kind =>
        {
            leads[at] = kind;
            return Fill(order, leads, at + 1);
        });
    }

    private static long LongestWithout(LeadKind[] leads, IReadOnlyList<int> spare) =>
        spare.Count > 0 ? leads.Sum(lead => lead.Millimetres) - spare.Min(at => leads[at].Millimetres) : -1;

    private static IEnumerable<IReadOnlyList<LeadForm>> Multisets(IReadOnlyList<LeadForm> forms, int count)
    {
        var chosen = new int[count];
        while (forms.Count > 0)
        {
            yield return [.. chosen.Select(index => forms[index])];
            var last = count - 1;
            while (last >= 0 && chosen[last] == forms.Count - 1)
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
