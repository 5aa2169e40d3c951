using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>
/// The supply as one line each, from services at the left to loads at the right. A layered tree: each end has a row of its own, each box
/// stands in the middle of what hangs on it, each depth has a column as wide as its widest words. In millimetres of the paper.
/// </summary>
internal sealed class OneLineDrawing
{
    // A row takes the name of a load with its current beside it, and a lead with its length under it.
    private const double Row = 7.6;
    private const double LineHeight = 3.6;
    private const double Letter = 1.5;
    private const double StrongLetter = 1.85;
    private const double Inset = 1.5;
    private const double Switch = 4;
    private const double Lead = 3;

    private readonly List<double> widths = [];
    private readonly List<double> leads = [];
    private readonly List<Shape> lines = [];
    private readonly List<Shape> boxes = [];

    private OneLineDrawing()
    {
    }

    /// <summary>Draws it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="room">What a page holds.</param>
    /// <param name="first">The first end that is drawn, from 0 on.</param>
    /// <param name="count">How many.</param>
    public static Scene Draw(Plan plan, OneLineRoom room, int first, int count)
    {
        var drawing = new OneLineDrawing();
        var row = 0.0;
        foreach (var tree in OneLineTree.Part(OneLineParts.Of(plan, room), first, count))
        {
            drawing.Measure([tree]);
            drawing.Place(tree, 0, row);
            row += RowsOf(tree);
        }

        return new Scene("Services, distributions, circuits and loads as one line", [new Layer("lines", drawing.lines), new Layer("boxes", drawing.boxes)]) { Scaling = Scaling.Diagram };
    }

    /// <summary>How wide the widest of them is, in mm of the paper.</summary>
    public static double WidthOf(IEnumerable<OneLineNode> trees) => trees.Select(tree =>
    {
        var drawing = new OneLineDrawing();
        drawing.Measure([tree]);
        return drawing.widths.Sum() + drawing.leads.Sum();
    }).DefaultIfEmpty().Max();

    /// <summary>How high they are one under the other, in mm of the paper.</summary>
    public static double HeightOf(IEnumerable<OneLineNode> trees) => Row * trees.Sum(RowsOf);

    // Columns are those of the tree alone: a wide one makes no narrow one wider.
    private void Measure(IEnumerable<OneLineNode> trees)
    {
        widths.Clear();
        leads.Clear();
        foreach (var tree in trees)
        {
            Measure(tree, 0);
        }
    }

    private void Measure(OneLineNode node, int depth)
    {
        while (widths.Count <= depth)
        {
            widths.Add(0);
            leads.Add(0);
        }

        widths[depth] = Math.Max(widths[depth], WidthOf(node));
        var lead = depth == 0 ? 0 : Lead + (node.Lead.Count == 0 ? 0 : node.Lead.Max(Long) + (Lead / 2));
        leads[depth] = Math.Max(leads[depth], lead);
        foreach (var child in node.Children)
        {
            Measure(child, depth + 1);
        }
    }

    private static double WidthOf(OneLineNode node)
    {
        var words = node.Lines.Select((line, index) => line.Length * (index == 0 ? StrongLetter : Letter)).Max();
        return node.Looks switch
        {
            OneLineLook.Device => Math.Max((node.Lines[0].Length * StrongLetter) + Switch, words) + Inset,
            OneLineLook.Outlet => Math.Max(Switch, words) + Inset,
            _ => words + (2 * Inset),
        };
    }

    private static double HeightOf(OneLineNode node) => (node.Lines.Count * LineHeight) + Inset;

    // A box may be taller than all that hangs on it.
    private static double RowsOf(OneLineNode node) =>
        Math.Max(Math.Max(1, node.Children.Sum(RowsOf)), node.Looks is OneLineLook.Service or OneLineLook.Distribution ? (HeightOf(node) + Inset) / Row : 0);

    private static double Long(string words) => words.Length * Letter;

    private double Left(int depth) => widths.Take(depth).Sum() + leads.Take(depth + 1).Sum();

    // Where its middle is, in rows: in the middle of its first and its last child.
    private double Place(OneLineNode node, int depth, double first)
    {
        var at = first + ((RowsOf(node) - node.Children.Sum(RowsOf)) / 2);
        var rows = new List<double>();
        foreach (var child in node.Children)
        {
            rows.Add(Place(child, depth + 1, at));
            at += RowsOf(child);
        }

        var middle = rows.Count == 0 ? first + (RowsOf(node) / 2) : (rows[0] + rows[^1]) / 2;
        Paint(node, depth, middle);
        Join(node, depth, middle, rows);
        return middle;
    }

    private void Paint(OneLineNode node, int depth, double row)
    {
        var (left, y) = (Left(depth), row * Row);
        switch (node.Looks)
        {
            case OneLineLook.Device:
                var right = left + widths[depth];
                lines.Add(new Line(new Point(left, y), new Point(right - Switch, y)));
                boxes.Add(new Line(new Point(right - Switch, y), new Point(right - 0.6, y - 1.6)));
                boxes.Add(new Circle(new Point(right, y), 0.5) { Fill = Fill.Black });
                boxes.Add(Words(new Point(left + 0.4, y - 1.9), node.Lines[0], TextStyle.Strong));
                boxes.Add(Words(new Point(left + 0.4, y + 1.9), node.Lines[1], TextStyle.Quiet));
                break;
            case OneLineLook.Outlet:
                boxes.Add(new Circle(new Point(left + (Switch / 2), y), 0.6) { Fill = Fill.Black });
                boxes.Add(Words(new Point(left + 0.4, y - 2.4), node.Lines[0], TextStyle.Quiet));
                break;
            case OneLineLook.Load:
                boxes.Add(Words(new Point(left + Inset, y - 1.7), node.Lines[0], TextStyle.Strong));
                boxes.Add(Words(new Point(left + Inset, y + 1.9), node.Lines[1], TextStyle.Quiet));
                break;
            default:
                Box(node, left, y, widths[depth]);
                break;
        }
    }

    private void Box(OneLineNode node, double left, double y, double width)
    {
        var height = HeightOf(node);
        boxes.Add(new Rectangle(new Point(left + (width / 2), y), width, height) { Fill = Fill.White, Pen = node.Looks == OneLineLook.Service ? Pen.Heavy : Pen.Normal });
        var top = y - (node.Lines.Count * LineHeight / 2) + (LineHeight / 2);
        for (var line = 0; line < node.Lines.Count; line++)
        {
            boxes.Add(Words(new Point(left + Inset, top + (line * LineHeight)), node.Lines[line], line == 0 ? TextStyle.Strong : TextStyle.Quiet));
        }
    }

    // From the box to a bar, along it, and to each child; on the way to it the words of its lead.
    private void Join(OneLineNode node, int depth, double middle, List<double> rows)
    {
        if (rows.Count == 0)
        {
            return;
        }

        var from = Left(depth) + (node.Looks == OneLineLook.Outlet ? Switch : widths[depth]);
        var bar = Left(depth) + widths[depth] + (Lead / 2);
        lines.Add(new Line(new Point(from, middle * Row), new Point(bar, middle * Row)));
        if (rows.Count > 1)
        {
            lines.Add(new Line(new Point(bar, rows[0] * Row), new Point(bar, rows[^1] * Row)));
        }

        for (var index = 0; index < rows.Count; index++)
        {
            var (child, y) = (node.Children[index], rows[index] * Row);
            lines.Add(new Line(new Point(bar, y), new Point(Left(depth + 1), y)));
            for (var word = 0; word < child.Lead.Count; word++)
            {
                lines.Add(Words(new Point(bar + 1.2, y + (word == 0 ? -1.8 : 1.9)), child.Lead[word], TextStyle.Quiet));
            }
        }
    }

    private static Lettering Words(Point at, string words, TextStyle style) => new(at, words, style) { Anchor = Anchor.Left };
}
