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
    // Rubber cable at its rating; what is cooler has less. Table 4F3B is for this temperature.
    private const double Hot = 60;

    /// <summary>Of a lead; unknown where its size or its length is.</summary>
    public static Figure<ElectricResistance> Of(string name, Cable cable, Mark at) =>
        Sum.Of($"{name}, one conductor", "R = r · L / 1000", Bs7671.Table4F3B)
            .Put("r", PerKilometre(cable.Section, at))
            .Put("L", Figure.From(cable.Length))
            .Gives((ohms, length) => ElectricResistance.FromOhms(ohms * length.Meters / 1000));

    /// <summary>Of the neutral of a lead.</summary>
    public static Figure<ElectricResistance> OfNeutral(string name, Cable cable, Mark at) =>
        Of($"{name}, neutral", cable.NeutralSection.Length > 0 ? cable with { Section = cable.NeutralSection } : cable, at);

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

    private static Figure<double> PerKilometre(string section, Mark at) => Gauge(section) is { } gauge
        ? Sum.Of($"conductor {section} hot, ohm per km", "r = r₇₅", Nec.Table8)
            .Put("r₇₅", new Figure<double>(Conductors.StrandedAt75(gauge)?.OhmsPerMetre * 1000, Doubts.None, new Reason.Fixed(at)))
            .Gives(ohms => ohms)
        : Metric(section, at);

    private static Figure<double> Metric(string section, Mark at)
    {
        var cold = SquareMillimetres(section) is { } size ? Conductors.Class5(size) : null;
        return Sum.Of($"conductor {section} hot, ohm per km", "r = r₂₀ · (1 + 0.00393 · (t - 20))", Iec60228.Class5)
            .Put("r₂₀", new Figure<double>(cold?.OhmsPerMetre * 1000, Doubts.None, new Reason.Fixed(at)))
            .Put("t", new Figure<double>(Hot, Doubts.None, Reason.Derived.It))
            .Gives((ohms, hot) => ohms * (1 + (Conductors.GainAt20 * (hot - 20))));
    }

    private static string? Gauge(string section) =>
        section.EndsWith("AWG", StringComparison.OrdinalIgnoreCase) ? section[..^3].Trim() : section.EndsWith("/0", StringComparison.Ordinal) ? section : null;

    private static double? SquareMillimetres(string section)
    {
        var text = section.Replace("mm²", "mm2", StringComparison.Ordinal);
        return text.EndsWith("mm2", StringComparison.Ordinal)
            && double.TryParse(text[..^3].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var size) ? size : null;
    }
}
