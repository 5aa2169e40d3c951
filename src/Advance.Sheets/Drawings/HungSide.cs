using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>What holds a truss, seen from its side: chains, hoists, bridles and the venue's points.</summary>
internal sealed class HungSide(Plan plan, TrussPlan truss, Speech speech, double top, double usualSteel)
{
    // In metres, as drawn: a hoist, and the mark of a point.
    private const double HoistWidth = 0.16;
    private const double HoistHeight = 0.32;
    private const double PointHalf = 0.25;

    /// <summary>The height of the highest point that it hangs on, in metres; null where nobody knows of any.</summary>
    public double? Steel => truss.Picks.SelectMany(PointsOf).Select(HeightOf).Max();

    /// <summary>From back to front.</summary>
    public IEnumerable<Shape> Shapes() =>
        truss.Picks.SelectMany(PickOf).Concat(truss.Picks.SelectMany(PointsOf).DistinctBy(point => point.Address.Text).Select(MarkOf));

    private IEnumerable<Shape> PickOf(PickPlan pick)
    {
        if (!pick.Placed.Pick.Along.Is(out var along))
        {
            yield break;
        }

        var bridle = BridleOf(pick);
        var hook = bridle is null ? PointsOf(pick).Select(HeightOf).FirstOrDefault() ?? usualSteel : ApexOf(bridle) ?? usualSteel;
        yield return new Line(TrussElevationDrawing.At(along.Meters, top), TrussElevationDrawing.At(bridle is null ? AlongOf(PointsOf(pick).FirstOrDefault(), along.Meters) : along.Meters, hook));
        foreach (var point in bridle is null ? [] : PointsOf(pick))
        {
            yield return new Line(TrussElevationDrawing.At(along.Meters, hook), TrussElevationDrawing.At(AlongOf(point, along.Meters), HeightOf(point) ?? usualSteel)) { Pen = new Pen(LineWeight.Normal, Dash.Dashed) };
        }

        yield return HoistOf(pick, along.Meters, hook);
    }

    private Symbol HoistOf(PickPlan pick, double along, double hook)
    {
        var middle = pick.Placed.Pick.BodyUp ? hook - HoistHeight : top + HoistHeight;
        Shape body = pick.Placed.Hoist is null
            ? new Circle(TrussElevationDrawing.At(along, top), PlotScale.Mm(HoistWidth / 3)) { Fill = Fill.Black }
            : new Rectangle(TrussElevationDrawing.At(along, middle), PlotScale.Mm(HoistWidth), PlotScale.Mm(HoistHeight)) { Fill = Fill.Grey };
        return new Symbol(pick.Address.Text, [body])
        {
            Label = new Label([new LabelLine(pick.Name), new LabelLine($"level {LoadWords.Of(pick.Level, speech)}", TextStyle.Quiet), new LabelLine($"moving, at most {LoadWords.Of(pick.Moving, speech)}", TextStyle.Quiet)]) { Rank = 1, MayStandInside = false },
        };
    }

    private Symbol MarkOf(PointPlan point)
    {
        var at = TrussElevationDrawing.At(AlongOf(point, 0), HeightOf(point) ?? usualSteel);
        var (left, right) = (at.Plus(-PlotScale.Mm(PointHalf), 0), at.Plus(PlotScale.Mm(PointHalf), 0));
        var height = HeightOf(point) is { } known && known != Steel ? $", {speech.Say(UnitsNet.Length.FromMeters(known))}" : "";
        return new Symbol(point.Address.Text, [new Line(left, right) { Pen = Pen.Heavy }])
        {
            Label = new Label([new LabelLine(point.Point.Name), new LabelLine($"{LoadWords.Of(point.AtRest, speech)}{height}", TextStyle.Quiet)]),
        };
    }

    // Where nobody knows where a point is, it is drawn over the pick that hangs on it.
    private double AlongOf(PointPlan? point, double otherwise) => truss.Placed.Along(point?.Spot)
        ?? truss.Picks.Where(pick => point is not null && PointsOf(pick).Contains(point) && pick.Placed.Pick.Along.IsKnown).Select(pick => (double?)pick.Placed.Pick.Along.Value.Meters).FirstOrDefault()
        ?? otherwise;

    private static double? HeightOf(PointPlan point) => point.Point.Height.Is(out var height) ? height.Meters : null;

    private double? ApexOf(BridlePlan bridle) => bridle.Legs.Select(leg => plan.Rigging.Points.FirstOrDefault(point => Same(point.Point.Name, leg.Point)) is { } point && HeightOf(point) is { } height
        ? height - (leg.Length * Math.Sin(leg.FromHorizontal * Math.PI / 180))
        : (double?)null).FirstOrDefault(apex => apex is not null);

    private BridlePlan? BridleOf(PickPlan pick) => pick.Placed.Pick.Point.Is(out var name) ? plan.Rigging.Bridles.FirstOrDefault(bridle => Same(bridle.Name, name)) : null;

    private IEnumerable<PointPlan> PointsOf(PickPlan pick)
    {
        if (!pick.Placed.Pick.Point.Is(out var name))
        {
            return [];
        }

        var names = BridleOf(pick)?.Bridle.Points ?? [name];
        return plan.Rigging.Points.Where(point => names.Any(one => Same(one, point.Point.Name)));
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
