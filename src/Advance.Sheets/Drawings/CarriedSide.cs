using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>What a truss carries besides itself, seen from its side: arrows for what is in one place, bands for what is spread.</summary>
internal static class CarriedSide
{
    // In metres, as drawn.
    private const double BandHeight = 0.12;
    private const double ArrowLength = 0.5;
    private const double HeadLength = 0.16;
    private const double HeadHalf = 0.06;

    /// <summary>From back to front; what has no known place is left out.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="heights">How heights are drawn.</param>
    /// <param name="speech">Of the paper.</param>
    public static IEnumerable<Shape> Shapes(TrussPlan truss, TrussHeights heights, Speech speech)
    {
        var (trim, stretch) = (heights.Lower, heights.Stretch);
        var placed = truss.Loads.Skip(1).Where(load => load.From is not null).ToList();
        var spread = placed.Where(load => load.To is not null).ToList();
        foreach (var (place, load) in spread.Index())
        {
            yield return Band(truss, load, trim - (BandHeight * stretch * (place + 0.5)), place, stretch, speech);
        }

        var below = trim - (BandHeight * stretch * spread.Count);
        var arrows = placed.Where(load => load.To is null).GroupBy(load => load.From!.Value).OrderBy(group => group.Key).Select(group => group.ToList()).ToList();
        var index = 0;
        foreach (var alike in LoadRuns.Of(arrows))
        {
            for (var within = 0; within < alike.Count; within++)
            {
                var label = within == alike.Count / 2 ? LabelOf(alike, speech) : null;
                yield return Arrow(truss, alike[within][0].From!.Value, below, index++, stretch, label);
            }
        }
    }

    private static Symbol Band(TrussPlan truss, CarriedLoad load, double middle, int index, double stretch, Speech speech)
    {
        var (from, to) = (load.From!.Value, load.To!.Value);
        var band = new Rectangle(TrussElevationDrawing.At((from + to) / 2, middle), PlotScale.Mm(to - from), PlotScale.Mm(BandHeight * stretch)) { Fill = Fill.Hatch, Pen = Pen.Thin };
        return new Symbol(FormattableString.Invariant($"{truss.Address.Text}/spread/{index}"), [band]) { Label = LabelOf([[load]], speech) };
    }

    private static Symbol Arrow(TrussPlan truss, double along, double from, int index, double stretch, Label? label)
    {
        var tip = from - (ArrowLength * stretch);
        var head = new Polyline(
            [TrussElevationDrawing.At(along, tip), TrussElevationDrawing.At(along - (HeadHalf * stretch), tip + (HeadLength * stretch)), TrussElevationDrawing.At(along + (HeadHalf * stretch), tip + (HeadLength * stretch))], Closed: true)
        {
            Fill = Fill.Black,
            Pen = Pen.Thin,
        };
        return new Symbol(FormattableString.Invariant($"{truss.Address.Text}/load/{index}"), [new Line(TrussElevationDrawing.At(along, from), TrussElevationDrawing.At(along, tip)), head]) { Label = label };
    }

    // Several fixtures in a row that weigh alike have one label, at the middle one.
    private static Label LabelOf(IReadOnlyList<IReadOnlyList<CarriedLoad>> alike, Speech speech) => new(
    [
        .. alike.Count > 1
            ? [new LabelLine(LoadRuns.NameOf(alike), TextStyle.Normal), new LabelLine($"{alike.Count} × {LoadWords.Of(alike[0][0].Weight, speech)}", TextStyle.Quiet)]
            : alike[0].SelectMany(load => new[] { new LabelLine(load.What, TextStyle.Normal), new LabelLine(LoadWords.Of(load.Weight, speech), TextStyle.Quiet) }),
    ])
    {
        MayStandInside = false,
    };
}
