using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>What holds a truss, seen from its side: chains, hoists, bridles and the venue's points.</summary>
internal sealed class HungSide(Plan plan, TrussPlan truss, Speech speech, TrussHeights heights)
{
    // In metres, as drawn: a hoist, and the mark of a point.
    private const double HoistWidth = 0.16;
    private const double HoistHeight = 0.32;
    private const double PointHalf = 0.25;

    /// <summary>The height of the highest point that a truss hangs on, in metres; null where nobody knows of any.</summary>
    public static double? SteelOf(Plan plan, TrussPlan truss) => truss.Picks.SelectMany(pick => PointsOf(plan, pick)).Select(HeightOf).Max();

    /// <summary>Chains up to points or to hooks of bridles, and the legs of those.</summary>
    public IEnumerable<Shape> Chains() => truss.Picks.SelectMany(ChainOf);

    /// <summary>Hoists and points, with what they bear.</summary>
    public IEnumerable<Symbol> Symbols() =>
        [
            .. truss.Picks.Where(pick => pick.Placed.Pick.Along.IsKnown).Select(pick => HoistOf(pick, pick.Placed.Pick.Along.Value.Meters, HookOf(pick))),
            .. truss.Picks.SelectMany(pick => PointsOf(plan, pick)).DistinctBy(point => point.Address.Text).Select(MarkOf),
        ];

    private IEnumerable<Shape> ChainOf(PickPlan pick)
    {
        if (!pick.Placed.Pick.Along.Is(out var along))
        {
            yield break;
        }

        var (bridle, points, hook) = (BridleOf(plan, pick), PointsOf(plan, pick).ToList(), HookOf(pick));
        var over = bridle is null ? AlongOf(points.Count > 0 ? points[0] : null, along.Meters) : along.Meters;
        yield return new Line(At(along.Meters, heights.Upper), At(over, hook));
        foreach (var point in bridle is null ? [] : points)
        {
            yield return new Line(At(along.Meters, hook), At(AlongOf(point, along.Meters), heights.Of(HeightOf(point) ?? heights.Steel))) { Pen = new Pen(LineWeight.Normal, Dash.Dashed) };
        }
    }

    // As drawn.
    private double HookOf(PickPlan pick) =>
        heights.Of((BridleOf(plan, pick) is { } bridle ? ApexOf(bridle) : PointsOf(plan, pick).Select(HeightOf).FirstOrDefault()) ?? heights.Steel);

    private static Paper.Pictures.Point At(double along, double above) => TrussElevationDrawing.At(along, above);

    private Symbol HoistOf(PickPlan pick, double along, double hook)
    {
        var tall = HoistHeight * heights.Stretch;
        var middle = pick.Placed.Pick.BodyUp ? hook - tall : heights.Upper + tall;
        Shape body = pick.Placed.Hoist is null
            ? new Circle(At(along, heights.Upper), PlotScale.Mm(HoistWidth * heights.Stretch / 3)) { Fill = Fill.Black }
            : new Rectangle(At(along, middle), PlotScale.Mm(HoistWidth * heights.Stretch), PlotScale.Mm(tall)) { Fill = Fill.Grey };
        return new Symbol(pick.Address.Text, [body])
        {
            Label = new Label([new LabelLine(pick.Name), new LabelLine($"level {LoadWords.Of(pick.Level, speech)}", TextStyle.Quiet), new LabelLine($"at most {LoadWords.Of(pick.Moving, speech)}", TextStyle.Quiet)]) { Rank = 1, MayStandInside = false },
        };
    }

    private Symbol MarkOf(PointPlan point)
    {
        var at = At(AlongOf(point, 0), heights.Of(HeightOf(point) ?? heights.Steel));
        var (left, right) = (at.Plus(-PlotScale.Mm(PointHalf), 0), at.Plus(PlotScale.Mm(PointHalf), 0));
        var height = HeightOf(point) is { } known && known < heights.Steel ? $", {speech.Say(UnitsNet.Length.FromMeters(known))}" : "";
        return new Symbol(point.Address.Text, [new Line(left, right) { Pen = Pen.Heavy }])
        {
            Label = new Label([new LabelLine(point.Point.Name), new LabelLine($"{LoadWords.Of(point.AtRest, speech)}{height}", TextStyle.Quiet)]),
        };
    }

    // Where nobody knows where a point is, it is drawn over the pick that hangs on it.
    private double AlongOf(PointPlan? point, double otherwise) => truss.Placed.Along(point?.Spot)
        ?? truss.Picks.Where(pick => point is not null && PointsOf(plan, pick).Contains(point) && pick.Placed.Pick.Along.IsKnown).Select(pick => (double?)pick.Placed.Pick.Along.Value.Meters).FirstOrDefault()
        ?? otherwise;

    private static double? HeightOf(PointPlan point) => point.Point.Height.Is(out var height) ? height.Meters : null;

    private double? ApexOf(BridlePlan bridle) => bridle.Legs.Select(leg => plan.Rigging.Points.FirstOrDefault(point => Same(point.Point.Name, leg.Point)) is { } point && HeightOf(point) is { } height
        ? height - (leg.Length * Math.Sin(leg.FromHorizontal * Math.PI / 180))
        : (double?)null).FirstOrDefault(apex => apex is not null);

    private static BridlePlan? BridleOf(Plan plan, PickPlan pick) => pick.Placed.Pick.Point.Is(out var name) ? plan.Rigging.Bridles.FirstOrDefault(bridle => Same(bridle.Name, name)) : null;

    private static IEnumerable<PointPlan> PointsOf(Plan plan, PickPlan pick)
    {
        if (!pick.Placed.Pick.Point.Is(out var name))
        {
            return [];
        }

        var names = BridleOf(plan, pick)?.Bridle.Points ?? [name];
        return plan.Rigging.Points.Where(point => names.Any(one => Same(one, point.Point.Name)));
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
