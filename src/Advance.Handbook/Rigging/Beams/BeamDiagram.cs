namespace Advance.Handbook;

/// <summary>
/// Shear and moment along a beam, summed from the left: <c>V = Σ R − Σ P</c>, <c>M = Σ R a − Σ P a</c>, with a sagging moment positive.
/// Source: <see cref="Statics.Equilibrium"/>.
/// </summary>
public sealed class BeamDiagram
{
    private const double Hair = 1e-9;
    private readonly double[] shearBefore;
    private readonly double[] shearAfter;
    private readonly double[] momentBefore;
    private readonly double[] momentAfter;
    private BeamExtreme? sagging;
    private BeamExtreme? hogging;
    private BeamExtreme? largestShear;

    /// <summary>From what supports give.</summary>
    /// <param name="layout">The beam with its loads.</param>
    /// <param name="reactions">N, upward, one for each support.</param>
    /// <param name="couples">N m, clockwise, one for each support; null where none is clamped.</param>
    public BeamDiagram(BeamLayout layout, IReadOnlyList<double> reactions, IReadOnlyList<double>? couples = null)
    {
        Layout = layout;
        var count = layout.Places.Length;
        (shearBefore, shearAfter, momentBefore, momentAfter) = (new double[count], new double[count], new double[count], new double[count]);
        var (up, turn) = Jumps(layout, reactions, couples);
        for (var index = 0; index < count; index++)
        {
            Step(index);
            shearAfter[index] = shearBefore[index] + up[index];
            momentAfter[index] = momentBefore[index] + turn[index];
        }
    }

    /// <summary>Where something happens.</summary>
    public BeamLayout Layout { get; }

    /// <summary>The largest sagging moment, N m; 0 where it sags nowhere.</summary>
    public BeamExtreme Sagging => sagging ??= LargestMoment(1);

    /// <summary>The largest hogging moment, N m, as a negative number; 0 where it hogs nowhere.</summary>
    public BeamExtreme Hogging => hogging ??= LargestMoment(-1);

    /// <summary>The largest shear either way, N, with its sign.</summary>
    public BeamExtreme LargestShear => largestShear ??= ShearEitherWay();

    /// <summary>How many places the layout has.</summary>
    public int Places => shearAfter.Length;

    /// <summary>Just left of a place of the layout, N.</summary>
    public double ShearBefore(int index) => shearBefore[index];

    /// <summary>Just right of a place of the layout, N.</summary>
    public double ShearAfter(int index) => shearAfter[index];

    /// <summary>Just left of a place of the layout, N m.</summary>
    public double MomentBefore(int index) => momentBefore[index];

    /// <summary>Just right of a place of the layout, N m.</summary>
    public double MomentAfter(int index) => momentAfter[index];

    /// <summary>Shear just right of a place, N.</summary>
    /// <param name="at">m from the left end, within the beam.</param>
    public double ShearAt(double at)
    {
        var index = Layout.Before(at);
        return shearAfter[index] - (Layout.PerMetre[index] * (at - Layout.Places[index]));
    }

    /// <summary>Shear just left of a place, N.</summary>
    /// <param name="at">m from the left end, within the beam.</param>
    public double ShearLeftOf(double at)
    {
        var index = Layout.Before(at);
        return at > Layout.Places[index] ? ShearAt(at) : shearBefore[index];
    }

    /// <summary>Moment just right of a place, N m, sagging positive.</summary>
    /// <param name="at">m from the left end, within the beam.</param>
    public double MomentAt(double at) => MomentIn(Layout.Before(at), at);

    /// <summary>Where, right of a place of the layout and before the next, shear has a value; null where it nowhere has.</summary>
    public double? WhereShearIs(int index, double shear)
    {
        var spread = Layout.PerMetre[index];
        if (spread == 0 || index + 1 >= shearAfter.Length)
        {
            return null;
        }

        var along = (shearAfter[index] - shear) / spread;
        return along > 0 && along < Layout.Places[index + 1] - Layout.Places[index] ? Layout.Places[index] + along : null;
    }

    private static (double[] Up, double[] Turn) Jumps(BeamLayout layout, IReadOnlyList<double> reactions, IReadOnlyList<double>? couples)
    {
        var up = new double[layout.Places.Length];
        var turn = (double[])layout.Couples.Clone();
        for (var index = 0; index < up.Length; index++)
        {
            up[index] = -layout.Forces[index];
        }

        for (var support = 0; support < layout.Supports.Length; support++)
        {
            up[layout.Supports[support]] += reactions[support];
            turn[layout.Supports[support]] += couples?[support] ?? 0;
        }

        return (up, turn);
    }

    private void Step(int index)
    {
        if (index == 0)
        {
            return;
        }

        var along = Layout.Places[index] - Layout.Places[index - 1];
        var spread = Layout.PerMetre[index - 1];
        shearBefore[index] = shearAfter[index - 1] - (spread * along);
        momentBefore[index] = momentAfter[index - 1] + (((shearAfter[index - 1] + shearBefore[index]) / 2) * along);
    }

    // Rounding leaves a hair at free ends: what is no more than that counts as nothing.
    private BeamExtreme LargestMoment(int sign)
    {
        var most = new BeamExtreme(0, 0);
        for (var index = 0; index < momentAfter.Length; index++)
        {
            most = Larger(Larger(most, momentBefore[index], Layout.Places[index], sign), momentAfter[index], Layout.Places[index], sign);
            if (WhereShearIs(index, 0) is { } turn)
            {
                most = Larger(most, MomentIn(index, turn), turn, sign);
            }
        }

        return most;
    }

    private static BeamExtreme Larger(BeamExtreme most, double moment, double at, int sign) =>
        sign * moment > (sign * most.Value) + Hair ? new(moment, at) : most;

    private double MomentIn(int index, double at)
    {
        var along = at - Layout.Places[index];
        return momentAfter[index] + (shearAfter[index] * along) - (Layout.PerMetre[index] * along * along / 2);
    }

    private BeamExtreme ShearEitherWay()
    {
        var most = new BeamExtreme(0, 0);
        for (var index = 0; index < shearAfter.Length; index++)
        {
            most = Further(Further(most, shearBefore[index], index), shearAfter[index], index);
        }

        return most;
    }

    private BeamExtreme Further(BeamExtreme most, double shear, int index) => Math.Abs(shear) > Math.Abs(most.Value) + Hair ? new(shear, Layout.Places[index]) : most;
}
