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

    // How far from the end of a truss something ends that is spread all along it, and how high that is named over the floor.
    private const double Ends = 0.05;
    private const double AboveFloor = 0.3;

    // From one tier of arrows to the next, so that the words of one find room under those of the other.
    private const double Tier = 0.6;

    /// <summary>From back to front; what has no known place is left out.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="heights">How heights are drawn.</param>
    /// <param name="speech">Of the paper.</param>
    public static IEnumerable<Shape> Shapes(TrussPlan truss, TrussHeights heights, Speech speech)
    {
        var (trim, stretch) = (heights.Lower, heights.Stretch);
        var spread = truss.Loads.Skip(1).Where(load => load.From is not null && load.To is not null).ToList();
        foreach (var (place, load) in spread.Index())
        {
            yield return Band(truss, load, trim - (BandHeight * stretch * (place + 0.5)), place, stretch, speech);
        }

        if (AllAlong(truss).ToList() is { Count: > 0 } along)
        {
            var words = string.Join(" · ", along.Select(load => $"{load.What} {LoadWords.Of(load.Weight, speech)}"));
            yield return new Lettering(TrussElevationDrawing.At(0, AboveFloor * stretch), $"hatched, all along: {words}", TextStyle.Quiet) { Anchor = Anchor.Left };
        }

        var below = trim - (BandHeight * stretch * spread.Count);
        var index = 0;
        foreach (var run in LoadRuns.Of(truss))
        {
            var length = ArrowLength + (Tier * run.Tier);
            for (var within = 0; within < run.Places.Count; within++)
            {
                var label = within == run.Places.Count / 2 ? LabelOf(run, speech) : null;
                yield return Arrow(truss, run.Places[within][0].From!.Value, below, length, index++, stretch, label);
            }
        }
    }

    /// <summary>How much more room under a truss its loads want than one tier of arrows, in metres, as drawn.</summary>
    public static double MoreRoom(TrussPlan truss) => Lower(truss) + (AllAlong(truss).Any() ? AboveFloor : 0);

    // What is spread over its whole length is named in a line over the floor: a label has no place that is nearer to it than another.
    private static IEnumerable<CarriedLoad> AllAlong(TrussPlan truss) => truss.Loads.Skip(1).Where(load => IsAllAlong(truss, load));

    private static bool IsAllAlong(TrussPlan truss, CarriedLoad load) => truss.Placed.Truss.Length.Is(out var length) && load.From <= Ends && load.To >= length.Meters - Ends;

    // How much lower than the shortest the longest arrow reaches.
    private static double Lower(TrussPlan truss) => Tier * LoadRuns.Of(truss).Select(run => run.Tier).DefaultIfEmpty(0).Max();

    private static Symbol Band(TrussPlan truss, CarriedLoad load, double middle, int index, double stretch, Speech speech)
    {
        var (from, to) = (load.From!.Value, load.To!.Value);
        var band = new Rectangle(TrussElevationDrawing.At((from + to) / 2, middle), PlotScale.Mm(to - from), PlotScale.Mm(BandHeight * stretch)) { Fill = Fill.Hatch, Pen = Pen.Thin };
        return new Symbol(FormattableString.Invariant($"{truss.Address.Text}/spread/{index}"), [band]) { Label = IsAllAlong(truss, load) ? null : LabelOf(new LoadRun([[load]], 0), speech) };
    }

    private static Symbol Arrow(TrussPlan truss, double along, double from, double length, int index, double stretch, Label? label)
    {
        var tip = from - (length * stretch);
        var head = new Polyline(
            [TrussElevationDrawing.At(along, tip), TrussElevationDrawing.At(along - (HeadHalf * stretch), tip + (HeadLength * stretch)), TrussElevationDrawing.At(along + (HeadHalf * stretch), tip + (HeadLength * stretch))], Closed: true)
        {
            Fill = Fill.Black,
            Pen = Pen.Thin,
        };
        return new Symbol(FormattableString.Invariant($"{truss.Address.Text}/load/{index}"), [new Line(TrussElevationDrawing.At(along, from), TrussElevationDrawing.At(along, tip)), head]) { Label = label };
    }

    // Several fixtures in a row that weigh alike have one label, at the middle one.
    private static Label LabelOf(LoadRun run, Speech speech) => new(
    [
        .. run.Places.Count > 1
            ? [new LabelLine(LoadRuns.NameOf(run), TextStyle.Normal), new LabelLine($"{run.Places.Count} × {LoadWords.Of(run.Places[0][0].Weight, speech)}", TextStyle.Quiet)]
            : run.Places[0].SelectMany(load => new[] { new LabelLine(load.What, TextStyle.Normal), new LabelLine(LoadWords.Of(load.Weight, speech), TextStyle.Quiet) }),
    ])
    {
        MayStandInside = false,
    };
}
