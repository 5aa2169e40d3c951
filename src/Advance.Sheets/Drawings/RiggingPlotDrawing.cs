using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>What hangs, seen from above and to scale, with the audience at the foot: trusses, picks, the venue's points, legs of bridles.</summary>
internal static class RiggingPlotDrawing
{
    // A pick this close under the point that it hangs on, in metres, is one place with one label.
    private const double SamePlace = 0.15;
    private const double PickRadius = 0.09;
    private const double PointHalf = 0.14;

    // A point this close to the middle of a hang, in metres, is told with the hang: it stands on its picture.
    private const double OnHang = 1;

    /// <summary>Draws it; null where nothing that hangs has a known place.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="hasLoads">Whether trims and loads are written, or names alone, as beside a table.</param>
    public static Scene? Draw(Plan plan, bool hasLoads = true)
    {
        var words = new RiggingPlotWords(Speech.Of(plan.Brief.Company.Units), hasLoads);
        var trusses = plan.Rigging.Trusses.Where(truss => truss.Placed.Spot is not null && truss.Placed.Truss.Length.IsKnown).ToList();
        var hangs = plan.Rigging.Hangs.Where(hang => hang.Stack.Spot is not null).ToList();
        var symbols = Points(plan, words).Concat(Picks(plan, trusses, words)).ToList();
        return trusses.Count == 0 && hangs.Count == 0 && symbols.Count == 0 ? null : new Scene(
            $"Rigging plot of {plan.Brief.Gig.Title}, seen from above with the audience at the foot",
            [
                .. Decks(plan),
                new Layer("trusses", [.. trusses.Select(truss => TrussOf(truss, words))]),
                new Layer("hangs", [.. hangs.Select(hang => HangOf(hang, plan, words))]),
                new Layer("bridles", [.. Legs(plan)]) { KeepsLabelsOff = true },
                new Layer("unused", [.. Unused(plan)]),
                new Layer("points", symbols),
                new Layer("datum", [.. Datum(plan.Stage.Datum ?? new Spot(0, 0))]),
            ]);
    }

    // The first is measured from; the others stand where they stand.
    private static IEnumerable<Layer> Decks(Plan plan) => plan.Stage.StandsAt.SelectMany((place, index) =>
        index == 0 ? DeckDrawing.Layers(place.Stage, Covered(plan), plan.Brief.Company.Units)
        : place.Spot is { } spot ? DeckDrawing.Further(place.Stage, spot)
        : []);

    // The letters of the sides keep off what hangs beside the stage, too.
    private static List<Placed> Covered(Plan plan) => [.. plan.Rigging.Trusses.Where(truss => truss.Placed.Spot is not null).Select(truss =>
        new Placed(truss.Address, truss.Name, Look.Truss, truss.Placed.Spot!.Value, FootprintOf(truss), 0, null, Domain.Facts.Doubts.None))];

    /// <summary>Trusses, hangs and stages that are not drawn, as nobody knows where they are or how large.</summary>
    public static IReadOnlyList<string> NotDrawn(Plan plan) =>
    [
        .. plan.Rigging.Trusses.Where(truss => truss.Placed.Spot is null || !truss.Placed.Truss.Length.IsKnown).Select(truss => truss.Name),
        .. plan.Rigging.Hangs.Where(hang => hang.Stack.Spot is null).Select(hang => hang.Name),
        .. plan.Stage.StandsAt.Where(place => place.Spot is null || !place.Stage.Size.IsKnown).Select(place => plan.Stage.Stages.Count > 1 ? $"stage {place.Stage.Name}" : "the stage"),
    ];

    private static Symbol TrussOf(TrussPlan truss, RiggingPlotWords words)
    {
        var covers = FootprintOf(truss);
        var outline = new Rectangle(PlotScale.At(truss.Placed.Spot!.Value), PlotScale.Mm(covers.Width), PlotScale.Mm(covers.Depth)) { Fill = Fill.Grey, Pen = Pen.Thin };
        return new Symbol(truss.Address.Text, [outline])
        {
            Label = words.Of(truss),
            IsArea = true,
        };
    }

    // Its top box, as it is turned; what it hangs by is drawn as picks.
    private static Symbol HangOf(HangPlan hang, Plan plan, RiggingPlotWords words)
    {
        var covers = Footprint.Of(hang.Stack.Boxes.Count > 0 ? hang.Stack.Boxes[0].Piece.Kind : null);
        var outline = new Rectangle(PlotScale.At(hang.Stack.Spot!.Value), PlotScale.Mm(covers.Width), PlotScale.Mm(covers.Depth), hang.Stack.Turn) { Fill = Fill.White };
        return new Symbol(hang.Address.Text, [outline])
        {
            Label = words.Of(hang, [.. plan.Rigging.Points.Where(point => OwnerOf(point, plan) == hang).Select(point => (point, Under(point, plan)))]),
            IsArea = true,
        };
    }

    private static Footprint FootprintOf(TrussPlan truss)
    {
        const double Usual = 0.3;
        var along = truss.Placed.Truss.Length.Is(out var length) ? length.Meters : 1;
        var across = truss.Placed.Kind?.Truss?.Width is { IsKnown: true } width ? width.Value.Meters : Usual;
        return truss.Placed.Truss.RunsUpstage ? new Footprint(across, along) : new Footprint(along, across);
    }

    // The venue's other points, so that nobody looks for them in the list.
    private static IEnumerable<Symbol> Unused(Plan plan) =>
        from point in plan.Rigging.Unused
        where point.Spot is not null
        select new Symbol((Domain.Figures.Address.Of("rigging") / "unused" / point.Point.Name).Text, [new Rectangle(PlotScale.At(point.Spot!.Value), PlotScale.Mm(2 * PointHalf), PlotScale.Mm(2 * PointHalf)) { Fill = Fill.White, Pen = Pen.Thin }])
        {
            Label = new Label([new LabelLine(point.Point.Name, TextStyle.Quiet)]),
        };

    // Where x and y are measured from, and which way.
    private static IEnumerable<Shape> Datum(Spot at)
    {
        const double Arm = 0.7;
        yield return new Circle(PlotScale.At(at), PlotScale.Mm(0.06)) { Fill = Fill.Black };
        yield return new Line(PlotScale.At(at), PlotScale.At(at.Plus(Arm, 0))) { Pen = Pen.Normal };
        yield return new Line(PlotScale.At(at), PlotScale.At(at.Plus(0, Arm))) { Pen = Pen.Normal };
        yield return new Lettering(PlotScale.At(at.Plus(Arm - 0.1, 0.15)), "x", TextStyle.Quiet) { Anchor = Anchor.Left };
        yield return new Lettering(PlotScale.At(at.Plus(0.1, Arm)), "y", TextStyle.Quiet) { Anchor = Anchor.Left };
    }

    // A cross in a square, with the picks that hang straight under it.
    private static IEnumerable<Symbol> Points(Plan plan, RiggingPlotWords words) =>
        from point in plan.Rigging.Points
        where point.Spot is not null
        select new Symbol(point.Address.Text, [.. Mark(PlotScale.At(point.Spot!.Value))])
        {
            Label = OwnerOf(point, plan) is null ? words.Of(point, Under(point, plan)) : null,
        };

    private static List<PickPlan> Under(PointPlan point, Plan plan) =>
        [.. plan.Rigging.Picks.Where(pick => IsUnder(pick, point) || (pick.Spot is null && IsOn(pick, point)))];

    // The hang whose picture the point stands on, where it carries nothing else.
    private static HangPlan? OwnerOf(PointPlan point, Plan plan)
    {
        var under = Under(point, plan);
        return plan.Rigging.Hangs.FirstOrDefault(hang => hang.Stack.Spot is { } spot && point.Spot is { } at && spot.To(at) <= OnHang
            && under.Count > 0 && under.All(pick => hang.Picks.Any(own => own.Pick.Address == pick.Address)));
    }

    private static IEnumerable<Shape> Mark(Paper.Pictures.Point at)
    {
        var half = PlotScale.Mm(PointHalf);
        yield return new Rectangle(at, 2 * half, 2 * half) { Fill = Fill.White };
        yield return new Line(at.Plus(-half, -half), at.Plus(half, half)) { Pen = Pen.Thin };
        yield return new Line(at.Plus(-half, half), at.Plus(half, -half)) { Pen = Pen.Thin };
    }

    // A pick that hangs elsewhere than straight under its point: on a bridle, or on nothing that is known.
    private static IEnumerable<Symbol> Picks(Plan plan, List<TrussPlan> trusses, RiggingPlotWords words) =>
        from pick in trusses.SelectMany(truss => truss.Picks).Concat(plan.Rigging.Hangs.SelectMany(hang => hang.Picks).Select(pick => pick.Pick))
        where pick.Spot is not null && !plan.Rigging.Points.Any(point => IsUnder(pick, point))
        select new Symbol(pick.Address.Text, [new Circle(PlotScale.At(pick.Spot!.Value), PlotScale.Mm(PickRadius)) { Fill = Fill.Black }])
        {
            Label = words.Of(pick),
        };

    private static bool IsUnder(PickPlan pick, PointPlan point) =>
        pick.Spot is { } spot && point.Spot is { } above && spot.To(above) <= SamePlace && IsOn(pick, point);

    private static bool IsOn(PickPlan pick, PointPlan point) =>
        pick.Placed.Pick.Point.Is(out var name) && string.Equals(name, point.Point.Name, StringComparison.OrdinalIgnoreCase);

    // From each point to where the hook of its bridle comes to hang.
    private static IEnumerable<Line> Legs(Plan plan) =>
        from bridle in plan.Rigging.Bridles
        from leg in bridle.Legs
        let point = plan.Rigging.Points.FirstOrDefault(point => string.Equals(point.Point.Name, leg.Point, StringComparison.OrdinalIgnoreCase))
        where point?.Spot is not null
        let level = leg.Length * Math.Cos(leg.FromHorizontal * Math.PI / 180)
        select new Line(PlotScale.At(point.Spot!.Value), PlotScale.At(point.Spot.Value.Plus(level * leg.TowardsX, level * leg.TowardsY))) { Pen = new Pen(LineWeight.Normal, Dash.Dashed) };
}
