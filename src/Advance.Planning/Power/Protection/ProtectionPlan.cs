namespace Advance.Planning;

/// <summary>What mains leads carry where they lie, and whether faults at the end of each are cleared.</summary>
/// <param name="Leads">What each lead carries.</param>
/// <param name="Faults">The loop to each box and to the end of each circuit.</param>
/// <param name="Selectivity">Whether only the nearest of several devices opens.</param>
public sealed record ProtectionPlan(IReadOnlyList<LeadCapacity> Leads, IReadOnlyList<FaultWay> Faults, Selectivity Selectivity)
{
    /// <summary>Their numbers.</summary>
    public IReadOnlyList<Stated> Figures => [.. Leads.SelectMany(lead => lead.Figures).DistinctBy(stated => stated.Address), .. Faults.SelectMany(fault => fault.Figures)];
}
