namespace Advance.Planning;

/// <summary>Leads with the same ends: which of them it is does not matter for whether leads can be joined, and matters for how far they reach.</summary>
/// <param name="a">One end.</param>
/// <param name="b">The other.</param>
/// <param name="kinds">Longest first, then by id.</param>
internal sealed class LeadForm(LeadPlug a, LeadPlug b, IReadOnlyList<LeadKind> kinds)
{
    /// <summary>Longest first, then by id.</summary>
    public IReadOnlyList<LeadKind> Kinds { get; } = kinds;

    /// <summary>Both ways to lay it: which end is at the source, which at the load.</summary>
    public IReadOnlyList<(LeadPlug Source, LeadPlug Load)> Ways { get; } = [.. LeadKind.Both(a, b)];

    /// <summary>Puts leads together, in the order of the first of each form.</summary>
    public static IReadOnlyList<LeadForm> Of(IEnumerable<LeadKind> leads) =>
    [
        .. leads.GroupBy(lead => (lead.A, lead.B))
            .Select(alike => new LeadForm(
                alike.Key.A, alike.Key.B, [.. alike.OrderByDescending(lead => lead.Millimetres).ThenBy(lead => lead.Kind.Id, StringComparer.Ordinal)])),
    ];
}
