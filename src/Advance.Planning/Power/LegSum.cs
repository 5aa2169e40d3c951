using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Adds currents on one leg: as phasors where angle and harmonic are known, all other magnitudes on top, which is never too little. Third
/// harmonics of several units are taken as aligned.
/// </summary>
internal static class LegSum
{
    // Of one phasor there is nothing to gain.
    private const int Some = 2;

    /// <summary>The sum, with its working.</summary>
    /// <param name="name">What it is the current of.</param>
    /// <param name="draws">What flows there.</param>
    public static Figure<ElectricCurrent> Of(string name, IReadOnlyList<LegDraw> draws)
    {
        var phasors = draws.Where(draw => draw.IsPhasor).ToList();
        return phasors.Count < Some ? Magnitudes(name, draws) : Phasors(name, phasors, [.. draws.Where(draw => !draw.IsPhasor)]);
    }

    private static Figure<ElectricCurrent> Magnitudes(string name, IReadOnlyList<LegDraw> draws) =>
        Sum.Of($"{name}, magnitudes added since angles are not known", "I = Σ Iᵢ", CircuitTheory.Phasors)
            .PutAll("Iᵢ", draws.Select(draw => draw.Current))
            .Gives(Total);

    private static Figure<ElectricCurrent> Phasors(string name, List<LegDraw> phasors, List<LegDraw> others)
    {
        var first = phasors.Select(Fundamental).ToList();
        var sum = Sum.Of($"{name}, as phasors", "I = √(a² + b² + c²) + d", CircuitTheory.Phasors)
            .Put("a", Part("in phase", first.Zip(phasors, (one, draw) => Along(one, draw.Lag!))))
            .Put("b", Part("lagging", first.Zip(phasors, (one, draw) => Across(one, draw.Lag!))))
            .Put("c", Part("third harmonic", first.Zip(phasors, (one, draw) => Third(one, draw.ThirdHarmonic!))));
        return sum.Put("d", Magnitudes("what has no known angle", others)).Gives((a, b, c, d) => ElectricCurrent.FromAmperes(Length(a, b, c) + d.Amperes));
    }

    private static double Length(ElectricCurrent a, ElectricCurrent b, ElectricCurrent c) =>
        Math.Sqrt((a.Amperes * a.Amperes) + (b.Amperes * b.Amperes) + (c.Amperes * c.Amperes));

    private static Figure<ElectricCurrent> Part(string name, IEnumerable<Figure<ElectricCurrent>> parts) =>
        Sum.Of(name, "I = Σ Iᵢ", CircuitTheory.Phasors).PutAll("Iᵢ", parts).Gives(Total);

    private static Figure<ElectricCurrent> Fundamental(LegDraw draw) =>
        Sum.Of("fundamental", "I₁ = I / √(1 + (h / 100)²)", CircuitTheory.Phasors)
            .Put("I", draw.Current)
            .Put("h", Percent(draw.ThirdHarmonic!))
            .Gives((whole, share) => ElectricCurrent.FromAmperes(Spectrum.Third(share / 100).FundamentalOf(whole.Amperes)));

    private static Figure<ElectricCurrent> Along(Figure<ElectricCurrent> first, Figure<Angle> lag) =>
        Sum.Of("in phase", "a = I₁ · cos(φ · π / 180)", CircuitTheory.Phasors).Put("I₁", first).Put("φ", lag).Gives((one, angle) => one * Math.Cos(angle.Radians));

    private static Figure<ElectricCurrent> Across(Figure<ElectricCurrent> first, Figure<Angle> lag) =>
        Sum.Of("lagging", "b = I₁ · sin(φ · π / 180)", CircuitTheory.Phasors).Put("I₁", first).Put("φ", lag).Gives((one, angle) => one * Math.Sin(angle.Radians));

    private static Figure<ElectricCurrent> Third(Figure<ElectricCurrent> first, Figure<Ratio> share) =>
        Sum.Of("third harmonic", "c = I₁ · h / 100", CircuitTheory.Phasors).Put("I₁", first).Put("h", Percent(share)).Gives((one, percent) => one * (percent / 100));

    private static Figure<double> Percent(Figure<Ratio> share) => new(share.Value?.Percent, share.RestsOn, share.Why, share.How);

    private static ElectricCurrent Total(Terms<ElectricCurrent> terms) => ElectricCurrent.FromAmperes(terms.Values.Sum(current => current.Amperes));
}
