using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Prints a neutral as a sum of phasors, order by order: a table of loads by leg with what each gives along and across.</summary>
/// <param name="angles">Of the legs.</param>
/// <param name="direction">Of the fundamental's sum, radian: what has no known angle lies along it, or as near to it as it may.</param>
internal sealed class NeutralWorking(LegAngles angles, double direction)
{
    /// <summary>The fundamental, and each harmonic that some load has.</summary>
    public IReadOnlyList<HarmonicCurrent> Orders(IReadOnlyList<NeutralTerm> terms)
    {
        var firsts = terms.Select(term => (Term: term, First: LegSum.Fundamental(term.Draw.Current, term.Facts.Harmonics))).ToList();
        var orders = terms.SelectMany(term => term.Facts.Harmonics).Select(one => one.Order).Distinct().Order();
        return [new(1, Fundamental(firsts)), .. orders.Select(order => new HarmonicCurrent(order, OfOrder(order, firsts)))];
    }

    /// <summary>All orders together.</summary>
    public static Figure<ElectricCurrent> Total(string name, IReadOnlyList<HarmonicCurrent> orders) =>
        Sum.Of(name, "I = √(Σ Nᵢ²)", CircuitTheory.Phasors)
            .PutAll("Nᵢ", orders.Select(order => order.Current))
            .Gives(terms => ElectricCurrent.FromAmperes(Math.Sqrt(terms.Values.Sum(one => one.Amperes * one.Amperes))));

    /// <summary>What a current of known direction gives along the first leg's voltage, and across it.</summary>
    internal static (Figure<ElectricCurrent> Along, Figure<ElectricCurrent> Across) Parts(string name, Figure<ElectricCurrent> current, double leg, Figure<Angle> lag) => (
        Sum.Of($"{name}, along", "x = I · cos(θ - φ)", CircuitTheory.Phasors).Put("I", current).Put("θ", Degrees(leg)).Put("φ", lag)
            .Gives((amperes, stands, behind) => amperes * Math.Cos(stands.Radians - behind.Radians)),
        Sum.Of($"{name}, across", "y = I · sin(θ - φ)", CircuitTheory.Phasors).Put("I", current).Put("θ", Degrees(leg)).Put("φ", lag)
            .Gives((amperes, stands, behind) => amperes * Math.Sin(stands.Radians - behind.Radians)));

    private Figure<ElectricCurrent> Fundamental(List<(NeutralTerm Term, Figure<ElectricCurrent> First)> firsts)
    {
        var phasors = firsts.Select(one => (one.Term, one.First, Lag: LagOf(one.Term))).ToLookup(one => one.Lag is not null);
        return Add("fundamental in the neutral", phasors[true].Select(one => Parts(NameOf(one.Term), one.First, angles.Degrees[one.Term.Line!.Value], one.Lag!)), phasors[false].Select(one => one.First));
    }

    private Figure<ElectricCurrent> OfOrder(int order, List<(NeutralTerm Term, Figure<ElectricCurrent> First)> firsts)
    {
        var some = firsts
            .Select(one => (one.Term, one.First, Harmonic: one.Term.Facts.Harmonics.FirstOrDefault(harmonic => harmonic.Order == order)))
            .Where(one => one.Harmonic.Order == order)
            .Select(one => (one.Term, Current: OfOrder(NameOf(one.Term), one.Harmonic, one.First)))
            .ToLookup(one => one.Term.Line is not null);
        var none = new Figure<Angle>(Angle.Zero, Doubts.None, Reason.Derived.It);
        return Add(
            $"order {order} in the neutral, at {order} times the angle of its leg",
            some[true].Select(one => Parts(NameOf(one.Term), one.Current, Math.IEEERemainder(order * angles.Degrees[one.Term.Line!.Value], 360), none)),
            some[false].Select(one => one.Current));
    }

    private static Figure<ElectricCurrent> OfOrder(string name, Harmonic harmonic, Figure<ElectricCurrent> first) =>
        Sum.Of($"{name}, order {harmonic.Order}", "c = I₁ · h / 100", CircuitTheory.Phasors)
            .Put("I₁", first)
            .Put("h", LegSum.Percent(harmonic.Share))
            .Gives((one, percent) => one * (percent / 100));

    private static Figure<ElectricCurrent> Add(string name, IEnumerable<(Figure<ElectricCurrent> Along, Figure<ElectricCurrent> Across)> parts, IEnumerable<Figure<ElectricCurrent>> aligned)
    {
        var phasors = parts.ToList();
        return Sum.Of(name, "N = √((Σ xᵢ)² + (Σ yᵢ)²) + Σ uᵢ", CircuitTheory.Phasors)
            .PutAll("xᵢ", phasors.Select(part => part.Along))
            .PutAll("yᵢ", phasors.Select(part => part.Across))
            .PutAll("uᵢ", aligned)
            .Gives((x, y, u) => ElectricCurrent.FromAmperes(Math.Sqrt((Total(x) * Total(x)) + (Total(y) * Total(y))) + Total(u)));
    }

    // Its own angle; or the limit nearest to the sum; null for what lies along it.
    private Figure<Angle>? LagOf(NeutralTerm term)
    {
        if (term.Line is not { } line)
        {
            return null;
        }

        var within = term.Facts.Within;
        return term.Facts.Lag ?? TurnedSum.LimitOf(new TurningPhasor(term.Amperes, angles.ToNeutral(line).Phase, within.Value!.Value.Radians), direction) switch
        {
            null => null,
            > 0 => Sum.Of("leading as far as it may", "φ = -w", CircuitTheory.Phasors).Put("w", within).Gives(most => -most),
            _ => within,
        };
    }

    private static string NameOf(NeutralTerm term) => term.Line is { } line ? $"{term.Draw.Name} on leg {line + 1}" : term.Draw.Name;

    private static Figure<Angle> Degrees(double degrees) => new(Angle.FromDegrees(degrees), Doubts.None, Reason.Derived.It);

    private static double Total(Terms<ElectricCurrent> terms) => terms.Values.Sum(one => one.Amperes);
}
