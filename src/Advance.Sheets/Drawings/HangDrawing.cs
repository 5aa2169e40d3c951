using System.Globalization;
using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>
/// A hang to scale, seen from its side with the audience at the right: frame, boxes at their angles, picks, centre of gravity. What is above and below
/// is drawn nearer than it is where that is far; dimensions say how far.
/// </summary>
internal static class HangDrawing
{
    // In metres, as drawn at most: from the lowest edge to what is under it, and from the frame up to the point.
    private const double MostBelow = 0.6;
    private const double MostAbove = 0.7;
    private const double Beyond = 0.15;
    private const double HoleRadius = 0.012;
    private const double PickRadius = 0.022;
    private const double CentreRadius = 0.04;

    /// <summary>Draws it; null where it could not be worked out.</summary>
    public static Scene? Draw(Plan plan, HangPlan hang)
    {
        if (hang.State is not { } state)
        {
            return null;
        }

        var speech = Speech.Of(plan.Brief.Company.Units);
        return new Scene(
            $"{hang.Name} seen from its side, audience at the right, {hang.Boxes.Count} boxes from the top down",
            [
                new Layer("boxes", [.. state.Boxes.SelectMany((box, index) => BoxOf(box, index + 1))]) { KeepsLabelsOff = true },
                new Layer("frame", [.. FrameOf(hang, state)]) { KeepsLabelsOff = true },
                new Layer("chains", [.. Chains(hang, state)]) { KeepsLabelsOff = true },
                new Layer("centre", [.. CentreOf(state)]),
                new Layer("picks", [.. hang.Picks.Where(pick => pick.Hole is not null).Select(pick => PickOf(pick, state, speech))]),
                new Layer("floor", [.. Floor(hang, state)]),
                new Layer("dimensions", [.. Dimensions(hang, state, speech)]),
            ]);
    }

    /// <summary>Whether something is drawn nearer than it is.</summary>
    public static bool IsCut(HangPlan hang) => hang.Bottom.Value is not { } bottom || bottom.Meters - Ground(hang) > MostBelow || hang.Picks.Count > 0;

    /// <summary>Upper and lower edge of a box in the drawing, mm.</summary>
    public static (double Top, double Bottom) BandOf(HangBoxPlan box) => box.At is { } at
        ? (-PlotScale.Mm(at.Edges.Max(edge => edge.Z)), -PlotScale.Mm(at.Edges.Min(edge => edge.Z)))
        : default;

    private static Paper.Pictures.Point At(SidePoint place) => PlotScale.At(place.X, place.Z);

    private static double Ground(HangPlan hang) => hang.Stack.Under.Value?.Meters ?? 0;

    private static IEnumerable<Shape> BoxOf(PlacedBox box, int number)
    {
        var edges = box.Edges;
        yield return new Polyline([At(edges[0]), At(edges[1]), At(edges[3]), At(edges[2])], Closed: true) { Fill = Fill.White };

        // The front is the heavy edge.
        yield return new Line(At(edges[0]), At(edges[2])) { Pen = Pen.Heavy };
        yield return new Lettering(At(Middle(edges)), number.ToString(CultureInfo.InvariantCulture), TextStyle.Strong);
    }

    // Nearer to its front: the centre of gravity is drawn further back.
    private static SidePoint Middle(IReadOnlyList<SidePoint> edges) =>
        new((0.36 * (edges[0].X + edges[2].X)) + (0.14 * (edges[1].X + edges[3].X)), (0.36 * (edges[0].Z + edges[2].Z)) + (0.14 * (edges[1].Z + edges[3].Z)));

    // Of a frame only pin and holes are known: it is drawn as far as they go.
    private static IEnumerable<Shape> FrameOf(HangPlan hang, HangState state)
    {
        var holes = hang.Holes.Where(hole => hole.Hole.Behind.IsKnown && hole.Hole.Above.IsKnown).Select(hole => PickHole.Of(hole.Hole)).ToList();
        var (ahead, behind) = (holes.Select(hole => hole.Forward).Append(0).Max(), holes.Select(hole => hole.Forward).Append(0).Min());
        var high = holes.Select(hole => hole.Up).DefaultIfEmpty(0.1).Max();
        var tilt = state.Tilt.Radians;
        SidePoint[] corners = [default(SidePoint).Along(tilt, ahead + 0.03, 0), default(SidePoint).Along(tilt, ahead + 0.03, -high - 0.03), default(SidePoint).Along(tilt, behind - 0.03, -high - 0.03), default(SidePoint).Along(tilt, behind - 0.03, 0)];
        yield return new Polyline([.. corners.Select(At)], Closed: true) { Fill = Fill.Grey };
        foreach (var hole in holes)
        {
            yield return new Circle(At(state.PlaceOf(hole)), PlotScale.Mm(HoleRadius)) { Fill = Fill.White, Pen = Pen.Thin };
        }
    }

    private static double Above(HangState state) => Math.Max(0, state.Boxes[0].Edges.Max(edge => edge.Z)) + MostAbove;

    private static IEnumerable<Shape> Chains(HangPlan hang, HangState state) =>
        from pick in hang.Picks
        where pick.Hole is not null
        let hole = state.PlaceOf(PickHole.Of(pick.Hole!))
        let top = new SidePoint(hole.X, Above(state))
        from shape in ChainOf(pick, hole, top)
        select shape;

    private static IEnumerable<Shape> ChainOf(HangPickPlan pick, SidePoint hole, SidePoint top)
    {
        yield return new Line(At(hole), At(top));
        if (pick.Pick.Placed.Hoist is not null)
        {
            var middle = new SidePoint(hole.X, pick.Pick.Placed.Pick.BodyUp ? top.Z - 0.1 : hole.Z + 0.2);
            yield return new Rectangle(At(middle), PlotScale.Mm(0.1), PlotScale.Mm(0.18)) { Fill = Fill.Grey };
        }
    }

    private static Symbol PickOf(HangPickPlan pick, HangState state, Speech speech)
    {
        var hole = state.PlaceOf(PickHole.Of(pick.Hole!));
        var on = pick.Pick.Placed.Pick.Point.Is(out var name) ? $"on {name}" : "on ?";
        return new Symbol(pick.Pick.Address.Text, [new Circle(At(hole), PlotScale.Mm(PickRadius)) { Fill = Fill.Black }])
        {
            Label = new Label([new LabelLine($"{pick.Pick.Name}, {on}"), new LabelLine($"hole {pick.Hole!.Name}, {LoadWords.Of(pick.Pick.Level, speech)}", TextStyle.Quiet)]) { Rank = 1, MayStandInside = false },
        };
    }

    private static IEnumerable<Shape> CentreOf(HangState state)
    {
        var (at, arm) = (At(state.Centre), PlotScale.Mm(CentreRadius));
        yield return new Circle(at, arm) { Fill = Fill.White, Pen = Pen.Thin };
        yield return new Line(at.Plus(-arm * 1.5, 0), at.Plus(arm * 1.5, 0)) { Pen = Pen.Thin };
        yield return new Line(at.Plus(0, -arm * 1.5), at.Plus(0, arm * 1.5)) { Pen = Pen.Thin };
    }

    // As drawn.
    private static double FloorAt(HangPlan hang, HangState state) =>
        state.Lowest.Z - (hang.Bottom.Value is { } bottom ? Math.Clamp(bottom.Meters - Ground(hang), 0, MostBelow) : MostBelow);

    private static IEnumerable<Shape> Floor(HangPlan hang, HangState state)
    {
        var edges = state.Boxes.SelectMany(box => box.Edges).ToList();
        var (left, right, floor) = (edges.Min(edge => edge.X) - Beyond, edges.Max(edge => edge.X) + Beyond, FloorAt(hang, state));
        yield return new Line(PlotScale.At(left, floor), PlotScale.At(right, floor)) { Pen = Pen.Heavy };
        yield return new Lettering(PlotScale.At(left, floor - 0.09), $"{(hang.Stack.On == Footing.Deck ? "deck" : "floor")}; audience →", TextStyle.Quiet) { Anchor = Anchor.Left };
    }

    private static IEnumerable<Shape> Dimensions(HangPlan hang, HangState state, Speech speech)
    {
        var right = state.Boxes.SelectMany(box => box.Edges).Max(edge => edge.X);
        yield return new Dimension(PlotScale.At(right, state.Lowest.Z), PlotScale.At(right, FloorAt(hang, state)), HeightWords(hang, speech));
        if (hang.Drop.Value is { } drop)
        {
            var left = state.Boxes.SelectMany(box => box.Edges).Min(edge => edge.X);
            yield return new Dimension(PlotScale.At(left, state.Lowest.Z), PlotScale.At(left, state.Lowest.Z + drop.Meters), speech.Say(drop));
        }
    }

    // Over a deck the height that counts to whoever stands there is that above the deck.
    private static string HeightWords(HangPlan hang, Speech speech) => hang.Bottom.Value is { } bottom
        ? $"{speech.Say(bottom - UnitsNet.Length.FromMeters(Ground(hang)))}{(hang.Bottom.RestsOn.Any ? " TBC" : "")}"
        : "?";
}
