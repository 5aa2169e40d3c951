using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Adds currents on one leg: as phasors where angle and harmonic are known, all other magnitudes on top, which is never too little. Harmonics
/// of one order of several units are taken as aligned.
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

    /// <summary>The fundamental in a current: <c>I₁ = I / √(1 + Σ hᵢ²)</c>.</summary>
    internal static Figure<ElectricCurrent> Fundamental(Figure<ElectricCurrent> whole, IEnumerable<Harmonic> harmonics) =>
        Sum.Of("fundamental", "I₁ = I / √(1 + Σ (hᵢ / 100)²)", CircuitTheory.Phasors)
            .Put("I", whole)
            .PutAll("hᵢ", harmonics.Select(one => Percent(one.Share)))
            .Gives((current, shares) => current / Math.Sqrt(1 + shares.Values.Sum(share => share / 100 * (share / 100))));

    /// <summary>A share as a number of per cent, for formulas.</summary>
    internal static Figure<double> Percent(Figure<Ratio> share) => new(share.Value?.Percent, share.RestsOn, share.Why, share.How);

    private static Figure<ElectricCurrent> Magnitudes(string name, IReadOnlyList<LegDraw> draws) =>
        Sum.Of($"{name}, magnitudes added since angles are not known", "I = Σ Iᵢ", CircuitTheory.Phasors)
            .PutAll("Iᵢ", draws.Select(draw => draw.Current))
            .Gives(Total);

    private static Figure<ElectricCurrent> Phasors(string name, List<LegDraw> phasors, List<LegDraw> others)
    {
        var all = phasors.Select(draw => (Draw: draw, First: Fundamental(draw.Current, draw.Harmonics))).ToList();
        var orders = phasors.SelectMany(draw => draw.Harmonics).Select(harmonic => harmonic.Order).Distinct().Order();
        return Sum.Of($"{name}, as phasors", "I = √(a² + b² + Σ cᵢ²) + d", CircuitTheory.Phasors)
            .Put("a", Part("in phase", all.Select(one => Component("in phase", "cos", Math.Cos, one.Draw, one.First))))
            .Put("b", Part("lagging", all.Select(one => Component("lagging", "sin", Math.Sin, one.Draw, one.First))))
            .PutAll("cᵢ", orders.Select(order => Part($"harmonic of order {order}", all.SelectMany(one => one.Draw.Harmonics.Where(harmonic => harmonic.Order == order).Select(harmonic => OfOrder(harmonic, one.First))))))
            .Put("d", Magnitudes("what has no known angle", others))
            .Gives((a, b, c, d) => ElectricCurrent.FromAmperes(Length(a, b, c) + d.Amperes));
    }

    private static double Length(ElectricCurrent a, ElectricCurrent b, Terms<ElectricCurrent> c) =>
        Math.Sqrt((a.Amperes * a.Amperes) + (b.Amperes * b.Amperes) + c.Values.Sum(one => one.Amperes * one.Amperes));

    private static Figure<ElectricCurrent> Part(string name, IEnumerable<Figure<ElectricCurrent>> parts) =>
        Sum.Of(name, "I = Σ Iᵢ", CircuitTheory.Phasors).PutAll("Iᵢ", parts).Gives(Total);

    // Between two lines the voltage stands at another angle than to neutral: s is by how much it leads.
    private static Figure<ElectricCurrent> Component(string name, string function, Func<double, double> of, LegDraw draw, Figure<ElectricCurrent> first) => draw.Turn == 0
        ? Sum.Of(name, $"i = I₁ · {function}(φ)", CircuitTheory.Phasors).Put("I₁", first).Put("φ", draw.Lag!).Gives((one, lag) => one * of(lag.Radians))
        : Sum.Of($"{name}, between two lines", $"i = I₁ · {function}(φ - s)", CircuitTheory.Phasors)
            .Put("I₁", first)
            .Put("φ", draw.Lag!)
            .Put("s", Degrees(draw.Turn))
            .Gives((one, lag, turn) => one * of(lag.Radians - turn.Radians));

    private static Figure<ElectricCurrent> OfOrder(Harmonic harmonic, Figure<ElectricCurrent> first) =>
        Sum.Of($"harmonic of order {harmonic.Order}", "c = I₁ · h / 100", CircuitTheory.Phasors).Put("I₁", first).Put("h", Percent(harmonic.Share)).Gives((one, percent) => one * (percent / 100));

    private static Figure<Angle> Degrees(double degrees) => new(Angle.FromDegrees(degrees), Domain.Facts.Doubts.None, Reason.Derived.It);

    private static ElectricCurrent Total(Terms<ElectricCurrent> terms) => ElectricCurrent.FromAmperes(terms.Values.Sum(current => current.Amperes));
}
