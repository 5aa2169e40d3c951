using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Places;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out what something does to what it stands on.</summary>
internal static class GroundWorking
{
    /// <summary>Null where nobody knows its feet.</summary>
    /// <param name="base">What it stands on.</param>
    /// <param name="whole">All of it.</param>
    /// <param name="weight">Of all of it, with margins.</param>
    /// <param name="feet">Where its own feet are, m from the middle of its base; empty where it stands on its whole underside.</param>
    /// <param name="footArea">What one covers; null where nobody says.</param>
    /// <param name="pad">What spreads its load; null for none.</param>
    /// <param name="isInWind">Whether the wind leans it.</param>
    public static GroundLoad? Of(StandingBase @base, StandingBody whole, Figure<Mass> weight, IReadOnlyList<(double X, double Y)> feet, Given<UnitsNet.Area>? footArea, Given<Size>? pad, bool isInWind)
    {
        if (@base.Polygon is null || whole.Edges.Count == 0 || weight.Value is { Kilograms: <= 0 })
        {
            return null;
        }

        var worst = isInWind ? whole.Edges.Where(edge => edge.Moment is not null).MaxBy(edge => edge.Moment!.Value?.NewtonMeters ?? double.MaxValue) ?? whole.Edges[0] : whole.Edges[0];
        var isAcross = Math.Abs(worst.X) > Math.Abs(worst.Y);
        var moment = isInWind && worst.Moment is { } leans ? leans : new Figure<Torque>(Torque.Zero, Doubts.None, Reason.Derived.It);
        var own = (Width: LengthOf(isAcross ? @base.Width : @base.Depth, @base.RestsOn), Length: LengthOf(isAcross ? @base.Depth : @base.Width, @base.RestsOn));
        var spread = pad is { IsKnown: true } known
            ? (Width: Figure.From(known.Select(size => isAcross ? size.Width : size.Depth)), Length: Figure.From(known.Select(size => isAcross ? size.Depth : size.Width)))
            : own;
        var off = Sum.Of("how far off the middle it acts", "e = M / (9.80665 · m)", RigidBodies.Balance).Put("M", moment).Put("m", weight).Gives(GroundPressure.Eccentricity);
        var most = Sum.Of("how far off the middle it may act", "E = B / 3", En1997.EffectiveWidth).Put("B", own.Width).Gives(width => width / 3);
        var isOff = off.AtMost(most) == Verdict.Fails || IsGone(spread.Width, off, spread.Length);
        var foot = feet.Count > 2 ? Foot(@base, whole, weight, feet, isInWind) : null;
        return new GroundLoad(weight, off, most, isOff || (feet.Count > 2 && pad is null) ? null : Under(weight, spread.Width, off, spread.Length), foot, pad is null ? UnderFoot(foot, footArea) : null);
    }

    // Nothing is left of a base to press on.
    private static bool IsGone(Figure<Length> width, Figure<Length> off, Figure<Length> length) =>
        length.Value is { Meters: <= 0 } || (width.Value is { } wide && off.Value is { } out_ && wide.Meters - (2 * out_.Meters) <= 0);

    private static Figure<Pressure> Under(Figure<Mass> weight, Figure<Length> width, Figure<Length> off, Figure<Length> length) =>
        Sum.Of("pressure on the ground", "p = 9.80665 · m / ((B - 2 · e) · L)", En1997.EffectiveWidth)
            .Put("m", weight).Put("B", width).Put("e", off).Put("L", length).Gives(GroundPressure.Under);

    // Leaned over each edge in turn, and standing straight: the foot that gets most. Where it tips, one foot or one edge has it all.
    private static Figure<Force> Foot(StandingBase @base, StandingBody whole, Figure<Mass> weight, IReadOnlyList<(double X, double Y)> feet, bool isInWind)
    {
        var leans = isInWind ? whole.Edges.Where(edge => edge.Moment is not null).Select(edge => (edge.X, edge.Y, Moment: edge.Moment!)).ToList() : [];
        return leans.Append((X: 0, Y: 0, Moment: new Figure<Torque>(Torque.Zero, Doubts.None, Reason.Derived.It)))
            .Select(lean => Foot(@base, whole, weight, feet, lean))
            .MaxBy(force => force.Value?.Newtons ?? double.MaxValue)!;
    }

    private static Figure<Force> Foot(StandingBase @base, StandingBody whole, Figure<Mass> weight, IReadOnlyList<(double X, double Y)> feet, (double X, double Y, Figure<Torque> Moment) lean)
    {
        var (across, back) = (whole.CentreAcross!, whole.CentreBack!);
        var doubts = across.RestsOn.With(back.RestsOn).With(lean.Moment.RestsOn).With(weight.RestsOn).With(@base.RestsOn);
        double? share = null;
        if (across.Value is { } x && back.Value is { } y && weight.Value is { } mass && lean.Moment.Value is { } moment)
        {
            var off = moment.NewtonMeters / (TipAndSlide.Gravity * mass.Kilograms);
            share = FootLoads.Shares(feet, x.Meters + (off * lean.X), y.Meters + (off * lean.Y))?.Max() ?? 1;
        }

        return Sum.Of("force on one foot", "R = 9.80665 · m · c", RigidBodies.Balance)
            .Put("m", weight)
            .Put("c", new Figure<double>(share, doubts, Reason.Derived.It))
            .Gives((all, part) => Force.FromNewtons(TipAndSlide.Gravity * all.Kilograms * part));
    }

    private static Figure<Pressure>? UnderFoot(Figure<Force>? foot, Given<UnitsNet.Area>? covers) => foot is null || covers is not { } area || (area.IsKnown && area.Value.SquareMeters <= 0)
        ? null
        : Sum.Of("pressure under one foot", "p = R / A", Publication.Arithmetic).Put("R", foot).Put("A", Figure.From(area))
            .Gives((force, seen) => Pressure.FromPascals(force.Newtons / seen.SquareMeters));

    private static Figure<Length> LengthOf(double metres, Doubts doubts) => new(Length.FromMeters(metres), doubts, Reason.Derived.It);
}
