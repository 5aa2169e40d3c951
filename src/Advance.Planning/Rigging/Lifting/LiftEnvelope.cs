namespace Advance.Planning;

/// <summary>The worst of some cases: for each hoist and for the truss, each with the case it comes from.</summary>
public sealed class LiftEnvelope
{
    private IReadOnlyList<CurvePoint>? curve;

    private LiftEnvelope(IReadOnlyList<LiftState> states, LiftCapacities? capacities)
    {
        States = states;
        Hoists = [.. Enumerable.Range(0, states[0].Levels.Count).Select(RangeOf)];
        var bent = states.Where(state => !state.Tips).ToList();
        Sagging = Largest(bent, state => state.Diagram!.Sagging, value => value);
        Hogging = Largest(bent, state => state.Diagram!.Hogging, value => -value);
        Shear = Largest(bent, state => state.Diagram!.LargestShear, Math.Abs);
        Use = capacities is null ? null : LiftUse.Worst(states.Select(state => capacities.UseOf(state)));
    }

    /// <summary>The cases it is made of.</summary>
    public IReadOnlyList<LiftState> States { get; }

    /// <summary>For each hoist.</summary>
    public IReadOnlyList<HoistRange> Hoists { get; }

    /// <summary>The largest sagging moment, N m; null where each case tips the truss.</summary>
    public LiftExtreme? Sagging { get; }

    /// <summary>The largest hogging moment, N m, as a negative number.</summary>
    public LiftExtreme? Hogging { get; }

    /// <summary>The largest shear either way, N, with its sign.</summary>
    public LiftExtreme? Shear { get; }

    /// <summary>Shear and moment along the truss; empty where each case tips it.</summary>
    public IReadOnlyList<CurvePoint> Curve => curve ??= LiftCurve.Of([.. States.Where(state => !state.Tips)]);

    /// <summary>What comes nearest to its capacity, or goes furthest beyond; null where no capacities were given or none is known.</summary>
    public LiftUse? Use { get; }

    /// <summary>Whether a case tips the truss, so that its moments are not known there.</summary>
    public bool Tips => States.Any(state => state.Tips);

    /// <summary>Of some cases; null of none.</summary>
    internal static LiftEnvelope? Of(IReadOnlyList<LiftState> states, LiftCapacities? capacities) =>
        states.Count == 0 ? null : new(states, capacities);

    private HoistRange RangeOf(int hoist)
    {
        var (most, least) = (States[0], States[0]);
        foreach (var state in States)
        {
            most = state.Levels[hoist] > most.Levels[hoist] * (1 + 1e-9) ? state : most;
            least = state.Levels[hoist] < least.Levels[hoist] * (1 - 1e-9) ? state : least;
        }

        return new(new(most.Levels[hoist], most.Case), new(least.Levels[hoist], least.Case));
    }

    private static LiftExtreme? Largest(List<LiftState> states, Func<LiftState, Handbook.BeamExtreme> of, Func<double, double> size)
    {
        LiftExtreme? most = null;
        foreach (var state in states)
        {
            var value = of(state);
            most = most is null || size(value.Value) > (size(most.Value) * (1 + 1e-9)) + 1e-9 ? new(value.Value, value.At, state.Case) : most;
        }

        return most;
    }
}
