using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// A straight truss on chains, as statics sees it: no limits, no names. Checked when it is made, so that what follows need not ask again.
/// </summary>
public sealed record HungBeam
{
    /// <summary>Makes one.</summary>
    /// <param name="length">m, more than 0.</param>
    /// <param name="bending">EI, N m², more than 0.</param>
    /// <param name="shear">GA, N, more than 0; null where unknown: then it bends only.</param>
    /// <param name="weights">Spread along it.</param>
    /// <param name="loads">At places of it.</param>
    /// <param name="hoists">One or more, rising along it, no two in one place.</param>
    /// <exception cref="ArgumentException">Something is out of its range, nothing weighs anything, or the hoists do not rise.</exception>
    public HungBeam(
        double length, double bending, double? shear, IReadOnlyList<HungWeight> weights, IReadOnlyList<HungLoad> loads, IReadOnlyList<HungHoist> hoists)
    {
        (Weights, Loads, Hoists) = (weights, loads, hoists);
        if (weights.Any(weight => weight.PerMetre < 0) || loads.Any(load => load.Force < 0 || !double.IsFinite(load.Across)))
        {
            throw new ArgumentException("What hangs pulls down.", nameof(loads));
        }

        if (hoists.Any(hoist => hoist.Stiffness is not (null or > 0)))
        {
            throw new ArgumentException("A chain's stiffness is more than 0, or unknown.", nameof(hoists));
        }

        Beam = new Beam(
            length,
            bending,
            shear,
            [.. weights.Select(weight => BeamLoad.Uniform(weight.From, weight.To, weight.PerMetre)), .. loads.Select(load => BeamLoad.Point(load.At, load.Force))]);
        Weight = Beam.Weight;
        if (!(Weight > 0))
        {
            throw new ArgumentException("A truss weighs something.", nameof(weights));
        }

        Centre = Beam.MomentAboutStart / Weight;
        Continuous = new ContinuousBeam(Beam, [.. hoists.Select(hoist => hoist.At)]);
    }

    /// <summary>Spread along it.</summary>
    public IReadOnlyList<HungWeight> Weights { get; }

    /// <summary>At places of it.</summary>
    public IReadOnlyList<HungLoad> Loads { get; }

    /// <summary>Rising along it.</summary>
    public IReadOnlyList<HungHoist> Hoists { get; }

    /// <summary>The truss and all that hangs on it.</summary>
    public Beam Beam { get; }

    /// <summary>m.</summary>
    public double Length => Beam.Length;

    /// <summary>W, N: all that hangs.</summary>
    public double Weight { get; }

    /// <summary>x_cg, m from the left end: where all of it could be put together.</summary>
    public double Centre { get; }

    /// <summary>e, m: how far off the centre line all of it could be put together, <c>e = Σ P y / W</c>.</summary>
    public double Across => Loads.Sum(load => load.Force * load.Across) / Weight;

    /// <summary>The largest load at one place and where, N.</summary>
    public BeamExtreme LargestNodeLoad => Continuous.Layout.LargestPointLoad;

    /// <summary>Whether its centre of gravity lies between the outermost hoists, or under the only one.</summary>
    public bool IsInside => Holds(Hoists[0].At, Hoists[^1].At);

    /// <summary>What solves it.</summary>
    internal ContinuousBeam Continuous { get; }

    /// <summary>How far it rolls about its line of hooks, rad: <c>atan(e / h)</c>.</summary>
    /// <param name="pick">h: how far the hooks are above the loads' centre of gravity, m, more than 0.</param>
    public double Roll(double pick) => Math.Atan2(Across, pick);

    /// <summary>Whether the centre of gravity lies between two places, a hair allowed.</summary>
    internal bool Holds(double first, double last) => Centre >= first - (1e-9 * Length) && Centre <= last + (1e-9 * Length);
}
