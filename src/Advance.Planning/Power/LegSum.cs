using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Adds currents on one leg: as phasors where all angles are known, else magnitudes, which is never too little.</summary>
internal static class LegSum
{
    /// <summary>The sum, with its working.</summary>
    /// <param name="name">What it is the current of.</param>
    /// <param name="draws">Each with its displacement angle; null where nobody knows it.</param>
    public static Figure<ElectricCurrent> Of(string name, IReadOnlyList<(Figure<ElectricCurrent> Draw, Figure<Angle>? Lag)> draws) =>
        draws.Count > 0 && draws.All(draw => draw.Lag is not null) ? AsPhasors(name, draws) : AsMagnitudes(name, draws);

    private static Figure<ElectricCurrent> AsMagnitudes(string name, IReadOnlyList<(Figure<ElectricCurrent> Draw, Figure<Angle>? Lag)> draws) =>
        Sum.Of($"{name}, magnitudes added since angles are not known", "I = Σ Iᵢ", CircuitTheory.Phasors)
            .PutAll("Iᵢ", draws.Select(draw => draw.Draw))
            .Gives(terms => ElectricCurrent.FromAmperes(terms.Values.Sum(current => current.Amperes)));

    private static Figure<ElectricCurrent> AsPhasors(string name, IReadOnlyList<(Figure<ElectricCurrent> Draw, Figure<Angle>? Lag)> draws) =>
        Sum.Of($"{name}, as phasors", "I = √(a² + b²)", CircuitTheory.Phasors)
            .Put("a", Part("in phase", "a = Σ aᵢ", "aᵢ", draws, Math.Cos))
            .Put("b", Part("lagging", "b = Σ bᵢ", "bᵢ", draws, Math.Sin))
            .Gives((along, across) => ElectricCurrent.FromAmperes(Math.Sqrt((along.Amperes * along.Amperes) + (across.Amperes * across.Amperes))));

    private static Figure<ElectricCurrent> Part(
        string name, string formula, string symbol, IReadOnlyList<(Figure<ElectricCurrent> Draw, Figure<Angle>? Lag)> draws, Func<double, double> of) =>
        Sum.Of(name, formula, CircuitTheory.Phasors)
            .PutAll(symbol, draws.Select(draw => new Figure<ElectricCurrent>(
                draw.Draw.Value is { } current && draw.Lag!.Value is { } lag ? current * of(lag.Radians) : null,
                draw.Draw.RestsOn.With(draw.Lag!.RestsOn),
                Reason.Derived.It)))
            .Gives(terms => ElectricCurrent.FromAmperes(terms.Values.Sum(current => current.Amperes)));
}
