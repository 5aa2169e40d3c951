using System.Numerics;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The way from a service to some place, cable by cable, and what is lost on it.</summary>
/// <param name="Name">Of the place, on paper.</param>
/// <param name="Point">The place, or the outlet before it.</param>
/// <param name="Segments">The cables.</param>
internal sealed record VoltageWay(string Name, SupplyPoint Point, IReadOnlyList<DropSegment> Segments)
{
    private readonly Doubts restsOn = Segments.Aggregate(Doubts.None, (sum, segment) => sum.With(segment.RestsOn));

    /// <summary>What is lost, as a number, volt.</summary>
    public Complex Lost(VoltageFrame frame, DropCase found) => Segments.Aggregate(Complex.Zero, (sum, segment) => sum + segment.Lost(frame, found));

    /// <summary>
    /// How much lower the voltage is, as a number, volt; below 0 where it rises. Exact where the nominal voltage is known, since of two cases that
    /// lose much the linear form may name the wrong one.
    /// </summary>
    public double Lowered(VoltageFrame frame, DropCase found, Figure<ElectricPotential> nominal) => Lost(frame, found) is var lost && nominal.Value is { } volts
        ? volts.Volts - Complex.Abs(volts.Volts - lost)
        : lost.Real;

    /// <summary>As a share of the nominal voltage, with what is used up before the service.</summary>
    public Figure<Ratio> Drop(VoltageFrame frame, DropCase found, Figure<ElectricPotential> nominal)
    {
        var (along, across) = Parts(frame, found);
        var name = $"{NameOf(frame)}, drop as a share";
        return Marked(Used is { } used
            ? Sum.Of(name, "u = v + 100 · (U - √((U - Σ eᵢ)² + (Σ fᵢ)²)) / U", Iec60364.AnnexG).Put("v", used).Put("U", nominal).PutAll("eᵢ", along).PutAll("fᵢ", across)
                .Gives((before, volts, e, f) => Ratio.FromPercent(before.Percent + ShareLost(volts, e, f)))
            : Sum.Of(name, "u = 100 · (U - √((U - Σ eᵢ)² + (Σ fᵢ)²)) / U", Iec60364.AnnexG).Put("U", nominal).PutAll("eᵢ", along).PutAll("fᵢ", across)
                .Gives((volts, e, f) => Ratio.FromPercent(ShareLost(volts, e, f))));
    }

    /// <summary>The same by the linear form.</summary>
    public Figure<Ratio> ByHand(VoltageFrame frame, DropCase found, Figure<ElectricPotential> nominal)
    {
        var along = Parts(frame, found).Along;
        var name = $"{NameOf(frame)}, drop by the linear form";
        return Marked(Used is { } used
            ? Sum.Of(name, "u = v + 100 · Σ eᵢ / U", Iec60364.AnnexG).Put("v", used).PutAll("eᵢ", along).Put("U", nominal)
                .Gives((before, e, volts) => Ratio.FromPercent(before.Percent + (100 * Total(e) / volts.Volts)))
            : Sum.Of(name, "u = 100 · Σ eᵢ / U", Iec60364.AnnexG).PutAll("eᵢ", along).Put("U", nominal).Gives((e, volts) => Ratio.FromPercent(100 * Total(e) / volts.Volts)));
    }

    /// <summary>How far it stands above the nominal voltage: below 0 where it does not.</summary>
    public Figure<Ratio> Rise(VoltageFrame frame, DropCase found, Figure<ElectricPotential> nominal)
    {
        var (along, across) = Parts(frame, found);
        return Marked(Sum.Of($"{NameOf(frame)}, rise as a share", "h = 100 · (√((U - Σ eᵢ)² + (Σ fᵢ)²) - U) / U", Iec60364.AnnexG).Put("U", nominal).PutAll("eᵢ", along).PutAll("fᵢ", across)
            .Gives((volts, e, f) => Ratio.FromPercent(-ShareLost(volts, e, f))));
    }

    /// <summary>The voltage that is left.</summary>
    public Figure<ElectricPotential> AtEnd(VoltageFrame frame, DropCase found, Figure<ElectricPotential> nominal)
    {
        var (along, across) = Parts(frame, found);
        var name = $"{NameOf(frame)}, voltage at the end";
        return Marked(Used is { } used
            ? Sum.Of(name, "Uₑ = √((U · (1 - v / 100) - Σ eᵢ)² + (Σ fᵢ)²)", Iec60364.AnnexG).Put("U", nominal).Put("v", used).PutAll("eᵢ", along).PutAll("fᵢ", across)
                .Gives((volts, before, e, f) => Left(volts * (1 - before.DecimalFractions), e, f))
            : Sum.Of(name, "Uₑ = √((U - Σ eᵢ)² + (Σ fᵢ)²)", Iec60364.AnnexG).Put("U", nominal).PutAll("eᵢ", along).PutAll("fᵢ", across).Gives(Left));
    }

    private Figure<Ratio>? Used => Point.Origin?.DropUsed is { } given ? Figure.From(given) : null;

    private string NameOf(VoltageFrame frame) => frame.Name.Length > 0 ? $"{Name}, {frame.Name}" : Name;

    private Figure<T> Marked<T>(Figure<T> figure)
        where T : struct, IComparable<T> => figure with { RestsOn = figure.RestsOn.With(restsOn) };

    private (IEnumerable<Figure<ElectricPotential>> Along, IEnumerable<Figure<ElectricPotential>> Across) Parts(VoltageFrame frame, DropCase found)
    {
        var parts = Segments.Select(segment => segment.Parts(frame, found)).ToList();
        return (parts.Select(part => part.Along), parts.Select(part => part.Across));
    }

    private static double ShareLost(ElectricPotential nominal, Terms<ElectricPotential> along, Terms<ElectricPotential> across) => 100 * (nominal.Volts - Left(nominal, along, across).Volts) / nominal.Volts;

    private static ElectricPotential Left(ElectricPotential nominal, Terms<ElectricPotential> along, Terms<ElectricPotential> across) =>
        ElectricPotential.FromVolts(Complex.Abs(new Complex(nominal.Volts - Total(along), -Total(across))));

    private static double Total(Terms<ElectricPotential> terms) => terms.Values.Sum(one => one.Volts);
}
