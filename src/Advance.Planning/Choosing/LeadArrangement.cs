namespace Advance.Planning;

/// <summary>Finds in which order leads must be joined to lead from one socket to another.</summary>
/// <param name="carries">What runs through.</param>
/// <param name="from">The socket at the source.</param>
/// <param name="to">The socket at the load.</param>
internal sealed class LeadArrangement(string carries, LeadPlug from, LeadPlug to)
{
    private readonly LeadPlugSex atSource = LeadSockets.AtSource(carries, from);
    private readonly LeadPlugSex atLoad = LeadSockets.AtLoad(carries, to);

    /// <summary>The forms in an order in which they can be joined; null where there is none.</summary>
    public IReadOnlyList<LeadForm>? Of(IReadOnlyList<LeadForm> forms)
    {
        var order = new List<LeadForm>();
        return GoOn(null, [.. forms], order) ? order : null;
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
                .DistinctBy(kind => kind.Kind.Id, StringComparer.Ordinal),
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

    private bool GoOn(LeadPlug? open, List<LeadForm> left, List<LeadForm> order)
    {
        if (left.Count == 0)
        {
            return open is { } last && FitsLoad(last);
        }

        for (var index = 0; index < left.Count; index++)
        {
            var form = left[index];
            foreach (var (source, load) in form.Ways.Where(way => open is { } end ? end.Joins(way.Source) : FitsSource(way.Source)))
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
