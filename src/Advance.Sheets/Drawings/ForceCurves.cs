using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Drawings;

/// <summary>Between which values shear and moment lie along a truss while it moves, over all cases, and what it bears of them. Heights are no lengths.</summary>
internal static class ForceCurves
{
    // In metres, as drawn: how far under the floor the middle of each diagram is, and half its height.
    private const double ShearMiddle = -1.6;
    private const double MomentMiddle = -3.9;
    private const double Half = 0.7;

    /// <summary>Both; nothing where nobody knows.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="dynamic">What starting and stopping adds, as a factor.</param>
    /// <param name="length">Of the truss, in metres.</param>
    /// <param name="stretch">How many times higher all is drawn.</param>
    /// <param name="units">Those of the paper.</param>
    public static IEnumerable<Shape> Shapes(TrussPlan truss, double dynamic, double length, double stretch, PaperUnits units)
    {
        if (truss.Study?.Moving.Curve is not { Count: > 1 } curve)
        {
            return [];
        }

        double OfForce(double newtons) => units.In(Force.FromNewtons(newtons * dynamic));
        double OfMoment(double newtonMetres) => units.In(Torque.FromNewtonMeters(newtonMetres * dynamic));
        var shear = truss.Shear.Allowed.Value is { } most ? units.In(most) : (double?)null;
        var sagging = truss.Sagging.Allowed.Value is { } down ? units.In(down) : (double?)null;
        var hogging = truss.Hogging.Allowed.Value is { } up ? units.In(up) : (double?)null;
        IEnumerable<Shape> shearing = Diagram($"Shear, {units.Force}", ShearMiddle, length, stretch, [.. curve.Select(point => (point.At, OfForce(point.LeastShear), OfForce(point.MostShear)))], shear, shear, units.ForceDecimals, isDown: false);
        IEnumerable<Shape> bending = Diagram($"Moment, {units.Moment}, sagging down", MomentMiddle, length, stretch, [.. curve.Select(point => (point.At, OfMoment(point.LeastMoment), OfMoment(point.MostMoment)))], sagging, hogging, units.ForceDecimals, isDown: true);
        // Whole, so that no label of the truss is led across one.
        return [new Symbol($"{truss.Address.Text}/shear", [.. shearing]), new Symbol($"{truss.Address.Text}/moment", [.. bending])];
    }

    private static IEnumerable<Shape> Diagram(string name, double middle, double length, double stretch, IReadOnlyList<(double At, double Least, double Most)> curve, double? most, double? least, int decimals, bool isDown)
    {
        var largest = Math.Max(curve.Max(point => Math.Max(Math.Abs(point.Least), Math.Abs(point.Most))), Math.Max(most ?? 0, least ?? 0));
        var scale = largest > 0 ? (isDown ? -Half : Half) / largest : 0;
        Paper.Pictures.Point At(double along, double height) => TrussElevationDrawing.At(along, height * stretch);
        Paper.Pictures.Point Of(double along, double value) => At(along, middle + (value * scale));
        yield return new Polyline([.. curve.Select(point => Of(point.At, point.Most)), .. curve.Reverse().Select(point => Of(point.At, point.Least))], Closed: true) { Fill = Fill.Grey, Pen = Pen.Normal };
        yield return new Line(Of(0, 0), Of(length, 0)) { Pen = Pen.Thin };
        yield return new Lettering(At(0, middle + Half + 0.35), name, TextStyle.Strong) { Anchor = Anchor.Left };
        foreach (var (limit, sign) in new[] { (most, 1), (least, -1) })
        {
            if (limit is { } allowed)
            {
                yield return new Line(Of(0, sign * allowed), Of(length, sign * allowed)) { Pen = new Pen(LineWeight.Normal, Dash.Dashed) };
                yield return new Lettering(Of(length, sign * allowed).Plus(100, 0), $"allowed {Said(allowed, decimals)}", TextStyle.Quiet) { Anchor = Anchor.Left };
            }
            else
            {
                yield return new Lettering(At(length, middle + (sign * Half)).Plus(100, 0), "allowed: not known", TextStyle.Quiet) { Anchor = Anchor.Left };
            }
        }

        var (high, low) = (curve.Max(point => point.Most), curve.Min(point => point.Least));
        yield return new Lettering(Of(0, high).Plus(-100, 0), Said(high, decimals), TextStyle.Quiet) { Anchor = Anchor.Right };
        if (Math.Abs(high - low) * Math.Abs(scale) > 0.35)
        {
            yield return new Lettering(Of(0, low).Plus(-100, 0), Said(low, decimals), TextStyle.Quiet) { Anchor = Anchor.Right };
        }
    }

    private static string Said(double value, int decimals) => Numbers.Plain(value, decimals).Replace('-', '−');
}
