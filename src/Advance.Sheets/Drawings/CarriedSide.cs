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
    /// <param name="trim">Of its lower chord, as drawn, in metres.</param>
    /// <param name="speech">Of the paper.</param>
    public static IEnumerable<Shape> Shapes(TrussPlan truss, double trim, Speech speech)
    {
        var placed = truss.Loads.Skip(1).Where(load => load.From is not null).ToList();
        var spread = placed.Where(load => load.To is not null).ToList();
        foreach (var (index, load) in spread.Index())
        {
            yield return Band(truss, load, trim - (BandHeight * (index + 0.5)), index, speech);
        }

        var below = trim - (BandHeight * spread.Count);
        foreach (var (index, group) in placed.Where(load => load.To is null).GroupBy(load => load.From!.Value).OrderBy(group => group.Key).Index())
        {
            yield return Arrow(truss, [.. group], below, index, speech);
        }
    }

    private static Symbol Band(TrussPlan truss, CarriedLoad load, double middle, int index, Speech speech)
    {
        var (from, to) = (load.From!.Value, load.To!.Value);
        var band = new Rectangle(TrussElevationDrawing.At((from + to) / 2, middle), PlotScale.Mm(to - from), PlotScale.Mm(BandHeight)) { Fill = Fill.Hatch, Pen = Pen.Thin };
        return new Symbol(FormattableString.Invariant($"{truss.Address.Text}/spread/{index}"), [band]) { Label = LabelOf([load], speech) };
    }

    private static Symbol Arrow(TrussPlan truss, IReadOnlyList<CarriedLoad> loads, double from, int index, Speech speech)
    {
        var along = loads[0].From!.Value;
        var tip = from - ArrowLength;
        var head = new Polyline(
            [TrussElevationDrawing.At(along, tip), TrussElevationDrawing.At(along - HeadHalf, tip + HeadLength), TrussElevationDrawing.At(along + HeadHalf, tip + HeadLength)], Closed: true)
        {
            Fill = Fill.Black,
            Pen = Pen.Thin,
        };
        return new Symbol(FormattableString.Invariant($"{truss.Address.Text}/load/{index}"), [new Line(TrussElevationDrawing.At(along, from), TrussElevationDrawing.At(along, tip)), head]) { Label = LabelOf(loads, speech) };
    }

    private static Label LabelOf(IReadOnlyList<CarriedLoad> loads, Speech speech) => new(
    [
        .. loads.SelectMany(load => new[] { new LabelLine(load.What, TextStyle.Normal), new LabelLine(LoadWords.Of(load.Weight, speech), TextStyle.Quiet) }),
    ])
    {
        MayStandInside = false,
    };
}
