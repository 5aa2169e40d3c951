namespace Advance.Planning;

/// <summary>Finds in which order leads must be joined to lead from one socket to another.</summary>
/// <param name="carries">What runs through.</param>
/// <param name="from">The socket at the source.</param>
/// <param name="to">The socket at the load.</param>
internal sealed class LeadArrangement(string carries, LeadPlug from, LeadPlug to)
{
    private readonly List<(LeadPlug A, LeadPlug B)> forms = [];
    private readonly Dictionary<string, IReadOnlyList<int>?> orders = new(StringComparer.Ordinal);
    private readonly LeadPlugSex atSource = LeadSockets.AtSource(carries, from);
    private readonly LeadPlugSex atLoad = LeadSockets.AtLoad(carries, to);

    /// <summary>The leads in order, of like ones the longer nearer the source; null where they cannot be joined.</summary>
    public IReadOnlyList<LeadKind>? Of(IReadOnlyList<LeadKind> leads)
    {
        if (OrderOf([.. leads.Select(Form).Order()]) is not { } order)
        {
            return null;
        }

        var left = leads.OrderByDescending(lead => lead.Millimetres).ThenBy(lead => lead.Kind.Id, StringComparer.Ordinal).ToList();
        return [.. order.Select(form => Take(form, left))];
    }

    /// <summary>The kinds that some chain between the sockets may hold: reached from the source, and reaching the load.</summary>
    public IReadOnlyList<LeadKind> Relevant(IReadOnlyList<LeadKind> kinds)
    {
        var laid = kinds.SelectMany(kind => kind.Ways.Select(way => (Kind: kind, Way: way))).ToList();
        var open = Spread(laid.Where(lead => FitsSource(lead.Way.Source)).Select(lead => lead.Way.Load), laid.Select(lead => lead.Way));
        var wanted = Spread(laid.Where(lead => FitsLoad(lead.Way.Load)).Select(lead => lead.Way.Source), laid.Select(lead => (lead.Way.Load, lead.Way.Source)));
        return
        [
            .. laid.Where(lead => (FitsSource(lead.Way.Source) || open.Any(end => end.Joins(lead.Way.Source))) && (FitsLoad(lead.Way.Load) || wanted.Any(end => lead.Way.Load.Joins(end))))
                .Select(lead => lead.Kind)
                .Distinct(),
        ];
    }

    private static HashSet<LeadPlug> Spread(IEnumerable<LeadPlug> first, IEnumerable<(LeadPlug Into, LeadPlug Out)> leads)
    {
        var (all, reached) = (leads.ToList(), first.ToHashSet());
        while (all.FirstOrDefault(lead => !reached.Contains(lead.Out) && reached.Any(end => end.Joins(lead.Into))) is { Into.Count: > 0 } more)
        {
            reached.Add(more.Out);
        }

        return reached;
    }

    private bool FitsSource(LeadPlug plug) => plug.FitsInto(from, atSource);

    private bool FitsLoad(LeadPlug plug) => plug.FitsInto(to, atLoad);

    // Leads with the same ends are of one form: only how many of each there are decides whether they can be joined.
    private int Form(LeadKind lead)
    {
        var at = forms.IndexOf((lead.A, lead.B));
        if (at < 0)
        {
            at = forms.Count;
            forms.Add((lead.A, lead.B));
        }

        return at;
    }

    private LeadKind Take(int form, List<LeadKind> left)
    {
        var at = left.FindIndex(lead => Form(lead) == form);
        var lead = left[at];
        left.RemoveAt(at);
        return lead;
    }

    private IReadOnlyList<int>? OrderOf(List<int> sorted)
    {
        var key = string.Join(' ', sorted.Select(form => (char)('0' + form)));
        if (!orders.TryGetValue(key, out var order))
        {
            var found = new List<int>();
            orders[key] = order = GoOn(null, sorted, found) ? found : null;
        }

        return order;
    }

    private bool GoOn(LeadPlug? open, List<int> left, List<int> order)
    {
        if (left.Count == 0)
        {
            return open is { } last && FitsLoad(last);
        }

        for (var index = 0; index < left.Count; index++)
        {
            var form = left[index];
            foreach (var (source, load) in LeadKind.Both(forms[form].A, forms[form].B).Where(way => open is { } end ? end.Joins(way.Source) : FitsSource(way.Source)))
            {
                left.RemoveAt(index);
                order.Add(form);
                if (GoOn(load, left, order))
                {
                    return true;
                }

                order.RemoveAt(order.Count - 1);
                left.Insert(index, form);
            }
        }

        return false;
    }
}
