using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Finds what loads of steady power get: less voltage makes them draw more, which leaves less voltage. Repeated until nothing moves by more than
/// a hundredth of a volt.
/// </summary>
internal static class SteadyVoltages
{
    private const int MostSteps = 20;
    private const double Still = 0.01;

    // Below half of the voltage nothing settles, and no power supply runs.
    private const double Least = 0.5;

    /// <summary>By load, and the circuits on which it does not settle.</summary>
    /// <param name="circuits">All circuits.</param>
    /// <param name="lowest">The voltage at the end of a circuit with all at most, V, where loads get so much; null where unknown.</param>
    public static (IReadOnlyDictionary<PowerLoad, SteadyVoltage> Loads, IReadOnlyList<Circuit> Collapsing) Of(
        IReadOnlyList<Circuit> circuits, Func<IReadOnlyDictionary<PowerLoad, SteadyVoltage>, Circuit, (Figure<ElectricPotential> Nominal, double? Lowest)> lowest)
    {
        var steady = circuits.Where(circuit => circuit.Chain.Loads.Any(load => load.IsSteady)).ToList();
        var found = new Dictionary<PowerLoad, SteadyVoltage>(ReferenceEqualityComparer.Instance);
        var moving = steady;
        for (var step = 0; step < MostSteps && moving.Count > 0; step++)
        {
            var ends = steady.ConvertAll(circuit => (Circuit: circuit, At: lowest(found, circuit)));
            moving = [.. ends.Where(one => Moves(found, one.Circuit, one.At.Nominal, one.At.Lowest)).Select(one => one.Circuit)];
        }

        return (found, moving);
    }

    private static bool Moves(Dictionary<PowerLoad, SteadyVoltage> found, Circuit circuit, Figure<ElectricPotential> nominal, double? lowest)
    {
        if (nominal.Value is not { } volts || lowest is not { } end)
        {
            return false;
        }

        var bounded = Math.Max(end, Least * volts.Volts);
        var moves = end < Least * volts.Volts;
        foreach (var load in circuit.Chain.Loads.Where(load => load.IsSteady))
        {
            moves |= !found.TryGetValue(load, out var before) || Math.Abs(before.AtEnd.Volts - bounded) > Still;
            found[load] = new SteadyVoltage(nominal, ElectricPotential.FromVolts(bounded));
        }

        return moves;
    }
}
