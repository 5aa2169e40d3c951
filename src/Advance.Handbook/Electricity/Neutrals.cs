using UnitsNet;

namespace Advance.Handbook;

/// <summary>Formulas for the neutral that can be done by hand. Phasors (<see cref="PhasorSum"/>) do it in general.</summary>
public static class Neutrals
{
    /// <summary>
    /// Neutral of a wye: <c>N = √(a² + b² + c² - a · b - b · c - c · a)</c>. Only for pure sines of the <b>same</b> displacement angle on all three
    /// legs; with different angles it comes out too small. Source: <see cref="CircuitTheory.Phasors"/>.
    /// </summary>
    /// <param name="a">In the first leg, A.</param>
    /// <param name="b">In the second leg, A.</param>
    /// <param name="c">In the third leg, A.</param>
    public static ElectricCurrent OfWye(ElectricCurrent a, ElectricCurrent b, ElectricCurrent c)
    {
        var (x, y, z) = (a.Amperes, b.Amperes, c.Amperes);

        // The same in differences, which does not lose its digits where the legs are nearly equal.
        return ElectricCurrent.FromAmperes(Math.Sqrt((Square(x - y) + Square(y - z) + Square(z - x)) / 2));
    }

    /// <summary>Neutral of a split phase: <c>N = |a - b|</c>, for pure sines of the same displacement angle.</summary>
    /// <param name="a">In the first half, A.</param>
    /// <param name="b">In the second half, A.</param>
    public static ElectricCurrent OfSplitPhase(ElectricCurrent a, ElectricCurrent b) => ElectricCurrent.FromAmperes(Math.Abs(a.Amperes - b.Amperes));

    /// <summary>
    /// The worst neutral over everything that may be switched off leg by leg, and the legs that are then on. Of equals the one with the fewest
    /// legs off holds, and of those the first. Often it is one leg off: then the neutral carries as much as a full leg, even with lamps.
    /// </summary>
    public static (IReadOnlyList<int> On, ElectricCurrent Neutral) Worst(PhasorSum sum)
    {
        var sets = Enumerable.Range(1, (1 << sum.Legs.Count) - 1)
            .Select(bits => (IReadOnlyList<int>)[.. Enumerable.Range(0, sum.Legs.Count).Where(leg => (bits & (1 << leg)) != 0)])
            .OrderByDescending(on => on.Count);
        (IReadOnlyList<int> On, ElectricCurrent Neutral) worst = ([], ElectricCurrent.Zero);
        foreach (var on in sets)
        {
            var neutral = sum.WithOnly(on).Neutral;
            if (worst.On.Count == 0 || neutral.Amperes > worst.Neutral.Amperes * (1 + 1e-9))
            {
                worst = (on, neutral);
            }
        }

        return worst;
    }

    private static double Square(double value) => value * value;
}
