using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What the ends of a lead let it carry in North America: the 60 °C column for its gauge behind a device of 100 A and less, else that of 75 °C. A
/// connector whose name says that it is made for more is good for that.
/// </summary>
internal static class TerminationCap
{
    private const double MostAtSixty = 100;

    /// <summary>What it carries with its ends counted, and whether they govern.</summary>
    /// <param name="use">Where it lies.</param>
    /// <param name="lead">Its kind.</param>
    /// <param name="alone">What the cable carries.</param>
    public static (Figure<ElectricCurrent> Carries, bool Governs) Of(LeadUse use, Kind lead, Figure<ElectricCurrent> alone)
    {
        if (use.Point.Rules != WiringRules.Nec || Most(use, lead) is not { } most || alone.Value is not { } cable || cable <= most)
        {
            return (alone, false);
        }

        var carries = Sum.Of($"{use.Run.Label}, {lead.Id}, alone, by its terminations", "I = min(A, T)", Nec.TerminationTemperature)
            .Put("A", alone)
            .Put("T", new Figure<ElectricCurrent>(most, Doubts.None, new Reason.Fixed(lead.At)))
            .Gives((table, ends) => ends < table ? ends : table);
        return (carries, true);
    }

    private static ElectricCurrent? Most(LeadUse use, Kind lead)
    {
        var section = lead.Cable!.Section;
        var gauge = LeadResistance.GaugeOf(section) ?? (LeadResistance.SquareMillimetres(section) is { } metric ? WireGauge.Within(metric) : null);
        var column = gauge is null ? null : Terminations.Carry(gauge, use.Device?.Limit.Value is { Amperes: <= MostAtSixty } ? TemperatureClass.Sixty : TemperatureClass.SeventyFive);
        var ends = new[] { Mating.PlugOf(lead.Cable), Mating.SocketOf(lead.Cable) }
            .Select(end => end is null ? null : Connectors.Rating(end, Reason.Derived.It, WiringRules.Nec).Value)
            .ToList();
        return column is { } wire && ends.TrueForAll(end => end > wire) ? ends.Min() : column;
    }
}
