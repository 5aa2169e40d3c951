using System.Numerics;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// How uneven the three lines of a service are, as its rotor feels it: negative over positive sequence of the fundamental. A current whose angle
/// nobody knows is taken as in phase with its voltage; one of which nobody knows the line as the same on each.
/// </summary>
internal static class UnevenLegs
{
    private static readonly string[] Systems = ["forward", "backward"];

    /// <summary>The share; unknown where a current is, or nothing flows.</summary>
    public static Figure<Ratio> Of(string name, IReadOnlyList<WiredDraw> draws, LegAngles angles)
    {
        var parts = Systems.Select(system => (
            Real: Part($"{system}, in phase", draws, angles, system, "cos", Math.Cos),
            Imaginary: Part($"{system}, across", draws, angles, system, "sin", Math.Sin))).ToList();
        var forward = Length(parts[0].Real, parts[0].Imaginary, "forward system of the lines");
        var backward = Length(parts[1].Real, parts[1].Imaginary, "backward system of the lines");
        return Sum.Of($"{name}, unbalance", "u = 100 · I₂ / I₁", CircuitTheory.Sequences)
            .Put("I₂", backward)
            .Put("I₁", forward.Value is { Amperes: > 0 } ? forward : forward with { Value = null })
            .Gives((negative, positive) => Ratio.FromPercent(100 * negative.Amperes / positive.Amperes));
    }

    private static Figure<ElectricCurrent> Length(Figure<ElectricCurrent> real, Figure<ElectricCurrent> imaginary, string name) =>
        Sum.Of(name, "I = √(a² + b²)", CircuitTheory.Sequences)
            .Put("a", real)
            .Put("b", imaginary)
            .Gives((a, b) => ElectricCurrent.FromAmperes(Math.Sqrt((a.Amperes * a.Amperes) + (b.Amperes * b.Amperes))));

    private static Figure<ElectricCurrent> Part(string name, IReadOnlyList<WiredDraw> draws, LegAngles angles, string system, string function, Func<double, double> of) =>
        Sum.Of(name, "I = Σ iᵢ", CircuitTheory.Sequences)
            .PutAll("iᵢ", draws.Select(draw => (Draw: draw, Unit: UnitOf(draw.Wiring, angles, system))).Where(one => one.Unit.Magnitude > 0).Select(one => Term(one.Draw, one.Unit, name, function, of)))
            .Gives(terms => ElectricCurrent.FromAmperes(terms.Values.Sum(one => one.Amperes)));

    private static Figure<ElectricCurrent> Term(WiredDraw draw, Complex unit, string name, string function, Func<double, double> of) =>
        Sum.Of($"{draw.Name}, {name}", $"i = m · I₁ · {function}(t - φ)", CircuitTheory.Sequences)
            .Put("m", Exactly(unit.Magnitude))
            .Put("I₁", RealPower.FirstOf(draw))
            .Put("t", Exactly(Angle.FromDegrees(unit.Phase * 180 / Math.PI)))
            .Put("φ", draw.Load?.Lag is { Value: not null } lag ? lag : Exactly(Angle.Zero))
            .Gives((share, current, turn, lag) => current * (share * of(turn.Radians - lag.Radians)));

    // What one ampere in phase with its voltage adds to a system; what is alike on all lines adds nothing to the one that turns backward.
    private static Complex UnitOf(MainsWiring wiring, LegAngles angles, string system)
    {
        var lines = new Complex[3];
        if (wiring.Kind == MainsWiringKind.BetweenLines)
        {
            var current = angles.Between(wiring.Lines[0], wiring.Lines[1]);
            lines[wiring.Lines[0]] += current;
            lines[wiring.Lines[1]] -= current;
        }
        else
        {
            foreach (var line in wiring.Lines)
            {
                lines[line] += angles.ToNeutral(line);
            }
        }

        var parts = SymmetricalComponents.Of(lines[0], lines[1], lines[2]);
        return Clean(system == Systems[0] ? parts.Positive : parts.Negative);
    }

    // Angles are thirds and sixths of a turn: the last bits of their sines are no current.
    private static Complex Clean(Complex value) => new(Math.Round(value.Real, 12, MidpointRounding.AwayFromZero), Math.Round(value.Imaginary, 12, MidpointRounding.AwayFromZero));

    private static Figure<T> Exactly<T>(T value)
        where T : struct, IComparable<T> => new(value, Doubts.None, Reason.Derived.It);
}
