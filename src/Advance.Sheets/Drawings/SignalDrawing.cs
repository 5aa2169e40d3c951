using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>
/// The way of the signal as a diagram, in mm of the paper. Between two layers come first the upright lanes, one for each edge, then the
/// room where labels stand over the ends of the edges: so no label can meet another, nor an edge that is not its own.
/// </summary>
internal sealed class SignalDrawing
{
    private const double LaneWidth = 1.6;
    private const double LaneMargin = 2;
    private const double Arrow = 1.8;

    private readonly SignalLayers set;
    private readonly List<double> lefts = [];

    private SignalDrawing(SignalLayers layers)
    {
        set = layers;
        var x = 0.0;
        for (var layer = 0; layer < set.Layers.Count; layer++)
        {
            lefts.Add(x);
            x += WidthOf(layer) + GapAfter(layer);
        }

        WidthMm = x;
    }

    /// <summary>How wide it is, in mm of the paper.</summary>
    public double WidthMm { get; }

    /// <summary>How high it is, in mm of the paper.</summary>
    public double HeightMm => IsEmpty ? 0 : set.Layers.SelectMany(layer => layer).Max(place => place.Top + place.Height) - set.Layers.SelectMany(layer => layer).Min(place => place.Top);

    /// <summary>Whether there is anything in it.</summary>
    public bool IsEmpty => set.Steps.Count == 0;

    /// <summary>Sets a part of it.</summary>
    public static SignalDrawing Of(Plan plan, SignalPart part)
    {
        var (nodes, edges) = SignalGraph.Of(plan).Part(part);
        return new SignalDrawing(SignalLayers.Of(nodes, edges));
    }

    /// <summary>Paints it.</summary>
    public Scene Scene() => new(
        "The way of the signal from the sources at the left to the loudspeakers at the right",
        [
            new Layer("leads", [.. set.Steps.SelectMany(Edge)]),
            new Layer("units", [.. set.Layers.SelectMany(layer => layer).Where(place => place.Node is not null).SelectMany(Node)]),
            new Layer("labels", [.. set.Steps.SelectMany(Label)]),
        ])
    {
        Scaling = Scaling.Diagram,
    };

    private double WidthOf(int layer) => set.Layers[layer].Max(place => place.Width);

    private IEnumerable<SignalStep> After(int layer) => set.Steps.Where(step => step.From.Layer == layer);

    private double LanesAfter(int layer) => (LaneMargin * 2) + (Math.Max(0, After(layer).Max(step => step.Lane)) * LaneWidth);

    private double GapAfter(int layer) => After(layer).Any()
        ? LanesAfter(layer) + After(layer).SelectMany(step => step.Label).Select(SignalText.Width).DefaultIfEmpty().Max() + Arrow + 1
        : 0;

    private double Right(SignalPlace place) => lefts[place.Layer] + (place.Node is null ? 0 : place.Width);

    private IEnumerable<Shape> Edge(SignalStep step)
    {
        var (start, end) = (new Point(Right(step.From), step.StartY), new Point(lefts[step.To.Layer], step.EndY));
        if (step.Lane < 0)
        {
            yield return new Line(start, end) { Pen = Pen.Normal };
        }
        else
        {
            var x = lefts[step.From.Layer] + WidthOf(step.From.Layer) + LaneMargin + (step.Lane * LaneWidth);
            yield return new Polyline([start, new Point(x, step.StartY), new Point(x, step.EndY), end]) { Pen = Pen.Normal };
        }

        if (step.To.Node is null)
        {
            yield return new Line(end, end.Plus(WidthOf(step.To.Layer), 0)) { Pen = Pen.Normal };
        }
        else
        {
            yield return new Polyline([end, end.Plus(-Arrow, -Arrow / 2.5), end.Plus(-Arrow, Arrow / 2.5)], Closed: true) { Fill = Fill.Black, Pen = Pen.Thin };
        }
    }

    private IEnumerable<Shape> Node(SignalPlace place)
    {
        var left = lefts[place.Layer];
        yield return new Rectangle(new Point(left + (place.Width / 2), place.Middle), place.Width, place.Height) { Fill = Fill.White, CornerMm = 0.8 };
        var text = SignalText.Title + (place.Node!.Lines.Count * SignalText.Leading);
        var y = place.Middle - (text / 2) + (SignalText.Title / 2);
        yield return new Lettering(new Point(left + 2, y), place.Node.Title, TextStyle.Strong) { Anchor = Anchor.Left };
        y += (SignalText.Title / 2) + (SignalText.Leading / 2) - 0.5;
        foreach (var line in place.Node.Lines)
        {
            yield return new Lettering(new Point(left + 2, y), line) { Anchor = Anchor.Left };
            y += SignalText.Leading;
        }
    }

    private IEnumerable<Shape> Label(SignalStep step)
    {
        var left = lefts[step.To.Layer] - GapAfter(step.From.Layer) + LanesAfter(step.From.Layer);
        for (var line = 0; line < step.Label.Count; line++)
        {
            var y = step.EndY - 0.3 - ((step.Label.Count - line - 0.5) * SignalText.Leading);
            yield return new Lettering(new Point(left, y), step.Label[line]) { Anchor = Anchor.Left };
        }
    }
}
