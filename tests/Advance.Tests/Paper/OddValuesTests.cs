using Advance.Paper;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using CsCheck;
using UglyToad.PdfPig;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper;

/// <summary>Numbers that no sane document holds: nothing of them throws, and all three files come out.</summary>
public sealed class OddValuesTests
{
    private static readonly Gen<double> Odd = Gen.Frequency(
        (4, Gen.Double[-50, 500]),
        (1, Gen.Const(0.0)),
        (1, Gen.Const(double.NaN)),
        (1, Gen.Const(double.PositiveInfinity)),
        (1, Gen.Const(double.NegativeInfinity)),
        (1, Gen.Const(1e300)),
        (1, Gen.Const(-1e9)),
        (1, Gen.Const(1e-300)));

    private static readonly Gen<Point> Spot = Gen.Select(Odd, Odd, (x, y) => new Point(x, y));

    private static readonly Gen<string> AnyText = Gen.OneOf(Gen.String, Gen.Const(""), Gen.Const("word and word"));

    private static readonly Gen<IReadOnlyList<Inline>> Line = Gen.OneOf(
        AnyText.Select(t => (Inline)new Text(t)),
        Gen.Select(AnyText, Odd, (t, v) => (Inline)new Datum(t, new NumberValue(v, t) { Decimals = (int)Math.Clamp(v, -5, 50) })),
        Odd.Select(v => (Inline)new Datum("sum", new SumValue(v))),
        Odd.Select(v => (Inline)new WriteIn(v)),
        Gen.Select(Odd, Odd, (a, b) => (Inline)new Bar(a, b)),
        AnyText.Select(t => (Inline)new Tag(t)),
        AnyText.Select(t => (Inline)new TickBox(t)),
        AnyText.Select(t => (Inline)new Link(t, [new Text("to"), new LineBreak()])),
        AnyText.Select(t => (Inline)new PageOf(t)),
        Gen.Const((Inline)new LineBreak())).Array[0, 6].Select(a => (IReadOnlyList<Inline>)a);

    private static readonly Gen<Shape> AnyShape = Gen.OneOf(
        Gen.Select(Spot, Spot, (a, b) => (Shape)new Line(a, b) { Pen = Pen.Heavy }),
        Gen.Select(Spot.Array[0, 4], Gen.Bool, (p, c) => (Shape)new Polyline(p, c) { Fill = Fill.Hatch }),
        Gen.Select(Spot, Odd, Odd, Odd, (m, w, h, t) => (Shape)new Rectangle(m, w, h, t) { CornerMm = w }),
        Gen.Select(Spot, Odd, (m, r) => (Shape)new Circle(m, r) { Fill = Fill.Grey }),
        Gen.Select(Spot, Odd, Odd, Odd, (m, r, s, w) => (Shape)new Arc(m, r, s, w, true)),
        Gen.Select(Spot, Spot, Spot, Spot, (a, b, c, d) => (Shape)new Curve(a, b, c, d)),
        Gen.Select(Spot, AnyText, Odd, (p, t, h) => (Shape)new Lettering(p, t) { HeightMm = h, Turn = h, Spread = h }),
        Gen.Select(Spot, Spot, AnyText, Odd, (a, b, t, o) => (Shape)new Dimension(a, b, t, o)),
        Gen.Select(Spot, Odd, AnyText, (m, r, t) => (Shape)new Symbol(t, [new Circle(m, r)]) { Label = new Label([new LabelLine(t)]) }));

    private static readonly Gen<Scene> AnyScene = Gen.Select(AnyShape.Array[0, 5], Gen.Enum<Scaling>(), Gen.Enum<BarUnit>(), (s, k, u) => new Scene("odd", [new Layer("l", s)]) { Scaling = k, BarUnit = u });

    private static readonly Gen<Table> AnyTable =
        from columns in Gen.Select(Line, Odd, Odd, Odd).Array[0, 4]
        from rows in Gen.Select(Gen.Select(Line, Gen.Int[-3, 9], Gen.Enum<Verdict>()).Array[0, 5], Gen.Enum<RowKind>(), Gen.Bool).Array[0, 5]
        select new Table(
            [.. columns.Select((c, i) => new TableColumn($"k{i}", c.Item1) { LeastMm = c.Item2, MostMm = c.Item3, Grow = c.Item4 })],
            [new RowGroup([.. rows.Select(r => new Row([.. r.Item1.Select(c => new Cell(c.Item1) { Span = c.Item2, Verdict = c.Item3 })]) { Kind = r.Item2, JoinsNext = r.Item3 })])])
        { Foot = [.. rows.Take(1).Select(r => new Row([.. r.Item1.Select(c => new Cell(c.Item1) { Span = c.Item2 })]) { Kind = RowKind.Total })] };

    private static readonly Gen<Block> AnyBlock = Gen.OneOf(
        Gen.Select(Gen.Int[-2, 9], Line, (l, t) => (Block)new Heading(l, t)),
        Line.Select(t => (Block)new Paragraph(t)),
        Line.Array[0, 3].Select(t => (Block)new ItemList(t)),
        Gen.Select(Line.Array[0, 4], Gen.Int[-3, 9], (t, c) => (Block)new Pairs([.. t.Select(l => new Pair(l, l))]) { Columns = c }),
        AnyTable.Select(t => (Block)t),
        Odd.Select(v => (Block)new Space(v)),
        Gen.Select(AnyText, Odd, (t, v) => (Block)new Poster(t, v)),
        Gen.Select(AnyScene, Odd, (s, h) => (Block)new Picture(s, []) { MostHeightMm = h }),
        Gen.Select(AnyScene, AnyTable, Odd, Spot, (s, t, v, b) => (Block)new Alongside(s, [new Band(b.X, b.Y)], t) { PictureShare = v }),
        Gen.Select(Odd, Odd, Line, (a, b, t) => (Block)new Columns([new ColumnsPart(a, [new Paragraph(t)]), new ColumnsPart(b, [])])));

    [Fact]
    public void Nothing_of_them_throws() => Gen.Select(AnyBlock.Array[0, 4], AnyText, Gen.Enum<TypeClass>()).Sample(
        (blocks, text, type) =>
        {
            var sheet = new Sheet(text, text, new SheetSetup(Class: type), new SheetHead(text) { Revision = text, Issued = text, Lines = [T(text)] }, new SheetFoot(T(text), T(text)), blocks);
            var printing = Printer.Print(Doc(sheet));
            using var pdf = PdfDocument.Open(printing.Pdf!);
            Assert.Equal(printing.PageCount, pdf.NumberOfPages);
            Assert.NotNull(printing.Html);
            Assert.NotNull(printing.Workbook);
        },
        iter: 500);
}
