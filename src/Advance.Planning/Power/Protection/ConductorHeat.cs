using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>How much heat of a fault the conductors of leads outlive.</summary>
internal static class ConductorHeat
{
    /// <summary>
    /// Of all conductors, lines and earths, the section in mm² and k of the one that outlives least; null where there is none, or the size or the
    /// insulation of one is unknown to the tables.
    /// </summary>
    public static (double Section, double K)? Weakest(IReadOnlyList<Kind> leads)
    {
        var all = leads.SelectMany(lead => Sections(lead.Cable!).Select(section => (Section: section, K: Adiabatic.K(LeadResistance.ClassOf(lead.Cable!))))).ToList();
        return all.Count == 0 || all.Exists(one => one.Section is null || one.K is null)
            ? null
            : all.Select(one => (Section: one.Section!.Value, K: one.K!.Value)).MinBy(one => one.Section * one.K);
    }

    private static IEnumerable<double?> Sections(Cable cable) => new[] { cable.Section, cable.EarthSection }
        .Where((section, index) => index == 0 || section.Length > 0)
        .Select(section => LeadResistance.SquareMillimetres(section) ?? (LeadResistance.GaugeOf(section) is { } gauge ? WireGauge.SquareMillimetres(gauge) : null));
}
