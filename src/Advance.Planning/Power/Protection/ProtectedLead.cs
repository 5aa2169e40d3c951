using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A mains lead and what protects it: the device before it, or a fuse in a plug on the way.</summary>
/// <param name="Use">The run it is part of.</param>
/// <param name="Lead">Its kind.</param>
/// <param name="Limit">What that lets through for good; known.</param>
/// <param name="Behind">What it is, in words.</param>
internal sealed record ProtectedLead(LeadUse Use, Kind Lead, Figure<ElectricCurrent> Limit, string Behind)
{
    /// <summary>What the lead is rated; unknown where nobody says.</summary>
    public Figure<ElectricCurrent> Rating => Lead.Cable!.Rating is { } rating ? Figure.From(rating) : new Figure<ElectricCurrent>(null, Domain.Facts.Doubts.None, Reason.Derived.It);

    /// <summary>Its smaller connector, as the stock names it; empty where nobody knows what one carries.</summary>
    public string Connector => Ends.OrderBy(end => end.Amperes).FirstOrDefault().Name ?? "";

    /// <summary>What that carries, by the rules that hold.</summary>
    public Figure<ElectricCurrent> ConnectorCarries => Connectors.Rating(Connector, new Reason.Fixed(Lead.At), Use.Point.Rules);

    /// <summary>Whether it goes from one connector to another.</summary>
    public bool IsAdapter => Mating.PlugOf(Lead.Cable!) is { } plug && Mating.SocketOf(Lead.Cable!) is { } socket && plug != socket;

    /// <summary>Whether its connector is what the device lets too much through, and not the lead: one fact is told once.</summary>
    public bool IsForItsConnector => ConnectorCarries.Value is { } connector && Limit.AtMost(ConnectorCarries) != Verdict.Holds
        && !(Rating.Value is { } lead && (lead.Amperes < connector.Amperes || (lead.Amperes <= connector.Amperes && !IsAdapter)));

    private IEnumerable<(string Name, double Amperes)> Ends => new[] { Mating.PlugOf(Lead.Cable!), Mating.SocketOf(Lead.Cable!) }.OfType<string>()
        .Select(end => (end, Connectors.Rating(end, Reason.Derived.It, Use.Point.Rules).Value?.Amperes))
        .Where(end => end.Amperes is not null)
        .Select(end => (end.end, end.Amperes!.Value));

    /// <summary>All leads that were picked, each chain from its outlet on. A device that nobody knows is asked for by a rule of its own.</summary>
    public static IEnumerable<ProtectedLead> Of(Plan plan) => LeadUses.Of(plan.Power, plan.Cables)
        .Where(use => use.Device?.Limit.Value is not null)
        .GroupBy(use => use.Point.Address)
        .SelectMany(chain => Along([.. chain]));

    // A fuse in a plug protects its lead and those behind it.
    private static IEnumerable<ProtectedLead> Along(IReadOnlyList<LeadUse> chain)
    {
        var (limit, behind) = (chain[0].Device!.Limit, chain[0].Device!.Name);
        foreach (var (use, lead) in chain.SelectMany(use => use.Run.Leads.Select(lead => (use, lead))))
        {
            if (lead.Cable!.Fuse is { IsKnown: true } fuse && fuse.Value.Amperes < limit.Value!.Value.Amperes)
            {
                (limit, behind) = (Figure.From(fuse), "the fuse in its plug");
            }

            yield return new ProtectedLead(use, lead, limit, behind);
        }
    }
}
