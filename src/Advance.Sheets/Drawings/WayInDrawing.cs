using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Drawings;

/// <summary>
/// The way from the vehicle to the stage, seen from the side, link after link. Openings stand at 1 : 100, so that a low door looks low; how far
/// it is between them is said, not drawn. In millimetres of the paper.
/// </summary>
internal sealed class WayInDrawing(Speech speech)
{
    private const double Link = 44;
    private const double Opening = 1.0 / 100;

    // How high what has no height is drawn, in mm of the paper.
    private const double Unsaid = 22;
    private const double Riser = 1.6;
    private const double Tread = 2.4;
    private const double Under = 4.5;
    private const double LineHeight = 5;
    private const double Vehicle = 17;
    private const int MostRisers = 6;
    private const int LongName = 14;

    private readonly List<Shape> shapes = [];
    private double left;
    private double floor;

    /// <summary>Draws it; null where the way has no links.</summary>
    public static Scene? Draw(Plan plan)
    {
        var way = plan.Brief.Venue.Access.Or([]);
        return way.Count == 0 ? null : new WayInDrawing(Speech.Of(plan.Brief.Company.Units)).Of(plan, way);
    }

    private Scene Of(Plan plan, IReadOnlyList<AccessStep> way)
    {
        Start(plan.Brief.Gig.Trucks.Select(truck => truck.Name));
        foreach (var step in way)
        {
            Add(step);
        }

        Arrow(left, left + 10);
        Words(left + 11, -LineHeight, "stage", TextStyle.Strong);
        return new Scene("The way in, link after link", [new Layer("way", shapes)]) { Scaling = Scaling.Diagram };
    }

    private void Start(IEnumerable<string> vehicles)
    {
        shapes.Add(new Rectangle(new Point(Vehicle / 2, -6), Vehicle, 9) { Fill = Fill.White });
        shapes.Add(new Circle(new Point(4, -1), 1) { Fill = Fill.Black });
        shapes.Add(new Circle(new Point(Vehicle - 4, -1), 1) { Fill = Fill.Black });
        Words(0, Under, vehicles.FirstOrDefault() ?? "vehicle", TextStyle.Strong);
        left = Vehicle;
        Arrow(left, left += 6);
    }

    private void Add(AccessStep step)
    {
        var from = left;
        left += Link;
        if (step.Steps > 0)
        {
            Climb(from, Math.Min(step.Steps, MostRisers));
        }
        else
        {
            Arrow(from, left);
        }

        if (step.Wide is { IsKnown: true } || step.High is { IsKnown: true })
        {
            Portal(from, step);
        }

        if (step.Turn is { IsKnown: true })
        {
            shapes.Add(new Arc(new Point(left - 7, floor - 7), 4, 90, -90));
            shapes.Add(new Polyline([new Point(left - 4, floor - 6), new Point(left - 3, floor - 7.6), new Point(left - 2, floor - 6)]));
        }

        var line = 0;
        foreach (var part in Parted(step.What))
        {
            Words(from + 1, Under + (line++ * LineHeight), part, TextStyle.Strong);
        }

        foreach (var said in Said(step).Where(said => said.Length > 0))
        {
            Words(from + 1, Under + (line++ * LineHeight), said, TextStyle.Quiet);
        }
    }

    // A long name takes two lines, so that it keeps clear of the next link's.
    private static string[] Parted(string name)
    {
        var middle = name.Length < LongName ? [] : Enumerable.Range(0, name.Length).Where(at => name[at] == ' ').OrderBy(at => Math.Abs(at - (name.Length / 2))).Take(1).ToArray();
        return middle.Length == 0 ? [name] : [name[..middle[0]], name[(middle[0] + 1)..]];
    }

    private void Climb(double from, int risers)
    {
        var start = from + 8;
        Arrow(from, start, hasHead: false);
        List<Point> stair = [new Point(start, floor)];
        for (var riser = 0; riser < risers; riser++)
        {
            floor -= Riser;
            stair.Add(new Point(start + (riser * Tread), floor));
            stair.Add(new Point(start + ((riser + 1) * Tread), floor));
        }

        shapes.Add(new Polyline(stair) { Pen = Pen.Heavy });
        Arrow(stair[^1].X, left);
    }

    // Broken where a side is not known, or wider than the link is long: then it ends with the link. Open above where no height is known: in the
    // open air there is none.
    private void Portal(double from, AccessStep step)
    {
        var (known, high) = (Millimetres(step.Wide), Millimetres(step.High));
        var at = from + 2;
        var to = at + Math.Min(known ?? high!.Value, Link - 4);
        var pen = known is { } wide && wide <= Link - 4 && high is not null ? Pen.Heavy : Pen.Heavy with { Dash = Dash.Dashed };
        Point[] up = [new Point(at, floor), new Point(at, floor - (high ?? Unsaid))];
        Point[] down = [new Point(to, floor - (high ?? Unsaid)), new Point(to, floor)];
        IEnumerable<Polyline> sides = high is null ? [new(up), new(down)] : [new([.. up, .. down])];
        shapes.AddRange(sides.Select(side => side with { Pen = pen }));
    }

    private static double? Millimetres(Given<Length>? side) => side is { IsKnown: true } known ? known.Value.Millimeters * Opening : null;

    private IEnumerable<string> Said(AccessStep step)
    {
        var (wide, high) = (Say(step.Wide), Say(step.High));
        yield return wide.Length > 0 && high.Length > 0 ? $"{wide} × {high} high" : wide.Length > 0 ? $"{wide} wide" : high.Length > 0 ? $"{high} high" : "";
        yield return Say(step.Long) is { Length: > 0 } way ? $"{way} long" : "";
        yield return step.Turn is { IsKnown: true } turn ? string.Create(CultureInfo.InvariantCulture, $"turns {turn.Value.Degrees:0}°") : "";
        yield return step.Steps > 0 ? string.Create(CultureInfo.InvariantCulture, $"{step.Steps} {(step.Steps == 1 ? "step" : "steps")} up or down") : "";
        yield return step.Load is { IsKnown: true } load ? $"carries {speech.Say(load.Value)}" : "";
    }

    private string Say(Given<Length>? side) => side is { IsKnown: true } known ? $"{speech.Say(known.Value)}{(known.Doubt is null ? "" : " TBC")}" : side is null ? "" : "TBC";

    private void Arrow(double from, double to, bool hasHead = true)
    {
        shapes.Add(new Line(new Point(from, floor), new Point(to, floor)));
        if (hasHead)
        {
            shapes.Add(new Polyline([new Point(to - 2, floor - 1), new Point(to, floor), new Point(to - 2, floor + 1)]));
        }
    }

    private void Words(double x, double y, string words, TextStyle style) => shapes.Add(new Lettering(new Point(x, y), words, style) { Anchor = Anchor.Left });
}
