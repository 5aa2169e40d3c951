using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The resistance of one conductor of mains leads, one way, at the temperature of a conductor that is fully loaded.</summary>
internal static class LeadResistance
{
    private const double Cold = 20;

    /// <summary>Of a lead; unknown where its size or its length is.</summary>
    public static Figure<ElectricResistance> Of(string name, Cable cable, Mark at) =>
        Sum.Of($"{name}, one conductor", "R = r · L / 1000", Bs7671.Table4F3B)
            .Put("r", PerKilometre(cable, cable.Section, at))
            .Put("L", Figure.From(cable.Length))
            .Gives((ohms, length) => ElectricResistance.FromOhms(ohms * length.Meters / 1000));

    /// <summary>Of the neutral of a lead.</summary>
    public static Figure<ElectricResistance> OfNeutral(string name, Cable cable, Mark at) =>
        Of($"{name}, neutral", cable.NeutralSection.Length > 0 ? cable with { Section = cable.NeutralSection } : cable, at);

    /// <summary>Of the earth of a lead.</summary>
    public static Figure<ElectricResistance> OfEarth(string name, Cable cable, Mark at) =>
        Of($"{name}, earth", cable.EarthSection.Length > 0 ? cable with { Section = cable.EarthSection } : cable, at);

    /// <summary>Of a lead that nothing has warmed yet: what limits the largest fault. Of a size in AWG it is the one at 75 °C, brought down.</summary>
    public static Figure<ElectricResistance> OfCold(string name, Cable cable, Mark at) =>
        Sum.Of($"{name}, one conductor, cold", "R = r₂₀ · L / 1000", Iec60228.Class5)
            .Put("r₂₀", new Figure<double>(ColdOf(cable.Section), Doubts.None, new Reason.Fixed(at)))
            .Put("L", Figure.From(cable.Length))
            .Gives((ohms, length) => ElectricResistance.FromOhms(ohms * length.Meters / 1000));

    /// <summary>What its insulation bears; 60 °C where nobody says.</summary>
    public static TemperatureClass ClassOf(Cable cable) =>
        cable.Insulation is { IsKnown: true } said && Enum.IsDefined((TemperatureClass)(int)said.Value.DegreesCelsius) ? (TemperatureClass)(int)said.Value.DegreesCelsius : TemperatureClass.Sixty;

    /// <summary>The reactance of one conductor; of a cable whose reactance nobody knows.</summary>
    public static Figure<ElectricResistance> Reactance(string name, Cable cable) =>
        Sum.Of($"{name}, reactance of one conductor", "X = x · L", Iec60364.AnnexG)
            .Put("x", new Figure<double>(VoltageDrop.UnknownReactance.OhmsPerMetre, Doubts.None, Reason.Derived.It))
            .Put("L", Figure.From(cable.Length))
            .Gives((ohms, length) => ElectricResistance.FromOhms(ohms * length.Meters));

    /// <summary>Of several in a row.</summary>
    public static Figure<ElectricResistance> InRow(string name, IEnumerable<Figure<ElectricResistance>> leads) =>
        Sum.Of(name, "R = Σ Rᵢ", Publication.Arithmetic)
            .PutAll("Rᵢ", leads)
            .Gives(terms => ElectricResistance.FromOhms(terms.Values.Sum(part => part.Ohms)));

    private static Figure<double> PerKilometre(Cable cable, string section, Mark at) => GaugeOf(section) is { } gauge
        ? Sum.Of($"conductor {section} hot, ohm per km", "r = r₇₅", Nec.Table8)
            .Put("r₇₅", new Figure<double>(Conductors.StrandedAt75(gauge)?.OhmsPerMetre * 1000, Doubts.None, new Reason.Fixed(at)))
            .Gives(ohms => ohms)
        : Metric(section, at, ClassOf(cable));

    private static double? ColdOf(string section) => GaugeOf(section) is { } gauge
        ? Conductors.StrandedAt75(gauge)?.OhmsPerMetre * 1000 / (1 + (Conductors.GainAt20 * (75 - Cold)))
        : (SquareMillimetres(section) is { } size ? Conductors.Class5(size) : null)?.OhmsPerMetre * 1000;

    private static Figure<double> Metric(string section, Mark at, TemperatureClass insulation)
    {
        var cold = SquareMillimetres(section) is { } size ? Conductors.Class5(size) : null;
        return Sum.Of($"conductor {section} hot, ohm per km", "r = r₂₀ · (1 + 0.00393 · (t - 20))", Iec60228.Class5)
            .Put("r₂₀", new Figure<double>(cold?.OhmsPerMetre * 1000, Doubts.None, new Reason.Fixed(at)))
            .Put("t", new Figure<double>((double)insulation, Doubts.None, Reason.Derived.It))
            .Gives((ohms, hot) => ohms * (1 + (Conductors.GainAt20 * (hot - Cold))));
    }

    /// <summary>The gauge of a size, without its letters; null for what is none.</summary>
    public static string? GaugeOf(string section) =>
        section.EndsWith("AWG", StringComparison.OrdinalIgnoreCase) ? section[..^3].Trim() : section.EndsWith("/0", StringComparison.Ordinal) ? section : null;

    /// <summary>A size in mm²; null for what is none.</summary>
    public static double? SquareMillimetres(string section)
    {
        var text = section.Replace("mm²", "mm2", StringComparison.Ordinal);
        return text.EndsWith("mm2", StringComparison.Ordinal)
            && double.TryParse(text[..^3].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var size) ? size : null;
    }
}
