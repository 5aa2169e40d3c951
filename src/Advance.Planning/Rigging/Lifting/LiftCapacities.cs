using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// What hoists and truss may carry. A null is unknown: it is left out of what is worked out here, and who asks must say that it cannot be judged.
/// </summary>
public sealed record LiftCapacities
{
    /// <summary>Makes them.</summary>
    /// <param name="hoists">N, more than 0, one for each hoist.</param>
    /// <param name="sagging">Ma where it sags, N m, more than 0.</param>
    /// <param name="hogging">Ma where it hogs, N m, more than 0.</param>
    /// <param name="shear">Va, N, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">One is nothing or less: nothing may carry nothing.</exception>
    public LiftCapacities(IReadOnlyList<double?> hoists, double? sagging, double? hogging, double? shear)
    {
        if (hoists.Append(sagging).Append(hogging).Append(shear).Any(capacity => capacity is not (null or > 0)))
        {
            throw new ArgumentOutOfRangeException(nameof(hoists), "A capacity is more than 0, or unknown.");
        }

        (Hoists, Sagging, Hogging, Shear) = (hoists, sagging, hogging, shear);
    }

    /// <summary>N, one for each hoist.</summary>
    public IReadOnlyList<double?> Hoists { get; }

    /// <summary>N m, where the truss sags.</summary>
    public double? Sagging { get; }

    /// <summary>N m, where it hogs.</summary>
    public double? Hogging { get; }

    /// <summary>N.</summary>
    public double? Shear { get; }

    /// <summary>How moment and shear in one place add up.</summary>
    public MomentAndShear Adds { get; init; }

    /// <summary>Whether nothing is unknown.</summary>
    public bool IsComplete => Hoists.All(hoist => hoist is not null) && Sagging is not null && Hogging is not null && Shear is not null;

    /// <summary>What is used most in a case; null where nothing is known. Moment and shear together: <c>M / Ma + V / Va</c>, or as their maker adds them, at most 1.</summary>
    public LiftUse? UseOf(LiftState state) => UseOf(state.Case, state.Levels, state.Diagram);

    /// <summary>The same of forces that are not a case's own.</summary>
    internal LiftUse? UseOf(LiftCase lift, IReadOnlyList<double> levels, BeamDiagram? diagram)
    {
        LiftUse? worst = null;
        for (var hoist = 0; hoist < levels.Count; hoist++)
        {
            worst = Worse(worst, levels[hoist] / Hoists[hoist], LiftPart.Hoist, hoist, null, lift);
        }

        if (diagram is null)
        {
            return worst;
        }

        worst = Worse(worst, diagram.Sagging.Value / Sagging, LiftPart.Sagging, null, diagram.Sagging.At, lift);
        worst = Worse(worst, -diagram.Hogging.Value / Hogging, LiftPart.Hogging, null, diagram.Hogging.At, lift);
        worst = Worse(worst, Math.Abs(diagram.LargestShear.Value) / Shear, LiftPart.Shear, null, diagram.LargestShear.At, lift);
        var together = Together(diagram);
        return Worse(worst, together?.Value, LiftPart.Interaction, null, together?.At, lift);
    }

    private static LiftUse? Worse(LiftUse? worst, double? share, LiftPart part, int? hoist, double? at, LiftCase lift) =>
        share is { } known && (worst is null || known > worst.Share * (1 + 1e-12)) ? new(known, part, hoist, at, lift) : worst;

    // A moment whose capacity is unknown counts nothing here.
    private BeamExtreme? Together(BeamDiagram diagram)
    {
        if (Shear is not { } shear || Adds == MomentAndShear.Apart)
        {
            return null;
        }

        var (sagging, hogging) = (Sagging ?? double.PositiveInfinity, Hogging ?? double.PositiveInfinity);
        double Share(double moment, double force) => Sum(Math.Abs(moment) / (moment > 0 ? sagging : hogging), Math.Abs(force) / shear);
        var most = new BeamExtreme(0, 0);
        for (var index = 0; index < diagram.Places; index++)
        {
            most = Larger(most, Share(diagram.MomentBefore(index), diagram.ShearBefore(index)), diagram, index);
            most = Larger(most, Share(diagram.MomentAfter(index), diagram.ShearAfter(index)), diagram, index);

            // Between two places the sum is largest where its slope, V / Ma ∓ w / Va, is nothing; of squares where V is. A hogging moment has no such place.
            var slopeless = Adds == MomentAndShear.Squared ? 0 : diagram.Layout.SpreadFrom(index) * sagging / shear;
            most = Inside(Inside(most, diagram, index, slopeless, Share), diagram, index, -slopeless, Share);
        }

        return most;
    }

    /// <summary>Moment and shear together, each as a part of what is allowed.</summary>
    internal double Sum(double moment, double shear) => Adds switch
    {
        MomentAndShear.Squared => Math.Sqrt((moment * moment) + (shear * shear)),
        MomentAndShear.Apart => Math.Max(moment, shear),
        _ => moment + shear,
    };

    private static BeamExtreme Larger(BeamExtreme most, double share, BeamDiagram diagram, int index) =>
        share > most.Value ? new(share, diagram.Layout.At[index]) : most;

    private static BeamExtreme Inside(BeamExtreme most, BeamDiagram diagram, int index, double shear, Func<double, double, double> share) =>
        diagram.WhereShearIs(index, shear) is { } at && share(diagram.MomentAt(at), shear) is var found && found > most.Value ? new(found, at) : most;
}
