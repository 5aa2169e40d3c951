using Advance.Handbook;

namespace Advance.Planning;

/// <summary>The envelope of shear and moment, place by place: where something happens, and at so many even steps between the ends.</summary>
internal static class LiftCurve
{
    private const int Steps = 120;

    /// <summary>Of cases on one layout; both sides of each place count.</summary>
    public static IReadOnlyList<CurvePoint> Of(IReadOnlyList<LiftState> states)
    {
        if (states.Count == 0)
        {
            return [];
        }

        BeamDiagram[] diagrams = [.. states.Select(state => state.Diagram!)];
        var at = diagrams[0].Layout.At;
        var happens = Enumerable.Range(0, at.Count).Select(index => Where(diagrams, index, at[index]));
        var between = Enumerable.Range(1, Steps - 1).Select(step => at[^1] * step / Steps).Except(at).Select(place => Between(diagrams, place));
        return [.. happens.Concat(between).OrderBy(point => point.At)];
    }

    private static CurvePoint Where(BeamDiagram[] diagrams, int index, double at)
    {
        var (shear, moment) = (CurveRange.Nothing, CurveRange.Nothing);
        foreach (var diagram in diagrams)
        {
            shear = shear.With(diagram.ShearBefore(index)).With(diagram.ShearAfter(index));
            moment = moment.With(diagram.MomentBefore(index)).With(diagram.MomentAfter(index));
        }

        return new(at, shear.Least, shear.Most, moment.Least, moment.Most);
    }

    private static CurvePoint Between(BeamDiagram[] diagrams, double at)
    {
        var (shear, moment) = (CurveRange.Nothing, CurveRange.Nothing);
        foreach (var diagram in diagrams)
        {
            shear = shear.With(diagram.ShearAt(at));
            moment = moment.With(diagram.MomentAt(at));
        }

        return new(at, shear.Least, shear.Most, moment.Least, moment.Most);
    }
}
