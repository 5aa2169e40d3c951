using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What tables say a cable carries alone, in air of 30 °C: BS 7671 appendix 4 for sizes in mm², NEC 400.5 for gauges and where the NEC holds. What
/// no table has is what the stock rates it.
/// </summary>
internal static class TabulatedCapacity
{
    private const int Single = 1;

    /// <summary>Of a kind of lead.</summary>
    /// <param name="lead">Its kind.</param>
    /// <param name="loaded">How many of its conductors carry current.</param>
    /// <param name="rules">Whose rules hold.</param>
    public static Figure<ElectricCurrent> Of(Kind lead, int loaded, WiringRules? rules)
    {
        var cable = lead.Cable!;
        var insulation = LeadResistance.ClassOf(cable);
        return Look(cable, loaded, rules, insulation) is var (carries, table)
            ? Sum.Of($"{lead.Id}, {cable.Section} of {(int)insulation} °C, {loaded} loaded conductors, alone at 30 °C", "It = t", table)
                .Put("t", new Figure<ElectricCurrent>(carries, Doubts.Of(cable.Insulation?.Doubt), new Reason.Fixed(lead.At)))
                .Gives(tabulated => tabulated)
            : cable.Rating is { } rating ? Figure.From(rating) : new Figure<ElectricCurrent>(null, Doubts.None, Reason.Derived.It);
    }

    private static (ElectricCurrent, Publication)? Look(Cable cable, int loaded, WiringRules? rules, TemperatureClass insulation)
    {
        var size = LeadResistance.SquareMillimetres(cable.Section);
        var gauge = LeadResistance.GaugeOf(cable.Section) ?? (rules == WiringRules.Nec && size is { } metric ? WireGauge.Within(metric) : null);
        return gauge is not null ? Nec(gauge, cable, loaded, insulation) : size is { } square ? Iec(square, cable, loaded, insulation) : null;
    }

    private static (ElectricCurrent, Publication)? Iec(double size, Cable cable, int loaded, TemperatureClass insulation)
    {
        var carries = cable.Cores == Single
            ? loaded == 2 ? FlexibleCables.TwoSingles(size, insulation) : null
            : loaded == 2 ? FlexibleCables.OnePhase(size, insulation) : FlexibleCables.ThreePhase(size, insulation);
        return carries is { } found ? (found, FlexibleCables.CapacityTable(size, insulation)) : null;
    }

    // Cords are those below 8 AWG; what is thicker is portable power cable.
    private static (ElectricCurrent, Publication)? Nec(string gauge, Cable cable, int loaded, TemperatureClass insulation) =>
        PortableCables.Carries(gauge, insulation, cable.Cores == Single ? 1 : loaded) is { } portable ? (portable, Handbook.Nec.Table400A2)
        : Cords.Carries(gauge, loaded) is { } cord ? (cord, Handbook.Nec.Table400A1)
        : null;
}
