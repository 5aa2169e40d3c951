using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// What hoists and truss may carry. A null is unknown: it is left out of what is worked out here, and who asks must say that it cannot be judged.
/// </summary>
/// <param name="Hoists">N, more than 0, one for each hoist.</param>
/// <param name="Sagging">N m, more than 0.</param>
/// <param name="Hogging">N m, more than 0.</param>
/// <param name="Shear">N, more than 0.</param>
public sealed record LiftCapacities(IReadOnlyList<double?> Hoists, double? Sagging, double? Hogging, double? Shear)
{
    /// <summary>Whether nothing is unknown.</summary>
    public bool IsComplete => Hoists.All(hoist => hoist is not null) && Sagging is not null && Hogging is not null && Shear is not null;

    /// <summary>What is used most in a case; null where nothing is known. Moment and shear together: <c>M / Ma + V / Va</c>, at most 1.</summary>
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
        if (Shear is not { } shear)
        {
            return null;
        }

        var (sagging, hogging) = (Sagging ?? double.PositiveInfinity, Hogging ?? double.PositiveInfinity);
        double Share(double moment, double force) => (Math.Abs(force) / shear) + (Math.Abs(moment) / (moment > 0 ? sagging : hogging));
        var most = new BeamExtreme(0, 0);
        for (var index = 0; index < diagram.Places; index++)
        {
            most = Larger(most, Share(diagram.MomentBefore(index), diagram.ShearBefore(index)), diagram, index);
            most = Larger(most, Share(diagram.MomentAfter(index), diagram.ShearAfter(index)), diagram, index);

            // Between two places the sum is largest where its slope, V / Ma ∓ w / Va, is nothing. A hogging moment has no such place.
            var slopeless = diagram.Layout.SpreadFrom(index) * sagging / shear;
            most = Inside(Inside(most, diagram, index, slopeless, Share), diagram, index, -slopeless, Share);
        }

        return most;
    }

    private static BeamExtreme Larger(BeamExtreme most, double share, BeamDiagram diagram, int index) =>
        share > most.Value ? new(share, diagram.Layout.At[index]) : most;

    private static BeamExtreme Inside(BeamExtreme most, BeamDiagram diagram, int index, double shear, Func<double, double, double> share) =>
        diagram.WhereShearIs(index, shear) is { } at && share(diagram.MomentAt(at), shear) is var found && found > most.Value ? new(found, at) : most;
}
