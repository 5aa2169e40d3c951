using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Examples;

/// <summary>Each block and each inline once, in each class of sheet.</summary>
internal static class EachBlock
{
    public static Document Document { get; } = Doc(
        Of("desk", "Each block, desk", TypeClass.Desk),
        Of("floor", "Each block, floor", TypeClass.Floor),
        Of("tape-up", "Each block, tape-up", TypeClass.TapeUp));

    private static Sheet Of(string id, string title, TypeClass type) => new(
        id,
        title,
        new SheetSetup(Class: type),
        HarvestSupper.Head(title, "for those who write templates") with { Revision = "DRAFT", Issued = "" },
        HarvestSupper.Foot("each block once"),
        [
            new Heading(1, T("A heading of the first level")) { Id = $"{id}-first" },
            new Paragraph([new Text("Plain, "), Strong("strong, "), Quiet("quiet, "), new Text("large, ", TextStyle.Large), new Datum("12.5 kg", new NumberValue(12.5, "kg")), new Text(" a link "), new Link($"#{id}-table", T("to the table")), new Text(" on page "), new PageOf($"{id}-table"), new Text(", a tag "), new Tag("TBC"), new Text(", a box "), new TickBox("done"), new Text(" and room to write "), new WriteIn(20)]),
            new Heading(2, T("Of the second")),
            new ItemList([T("a list of short items"), T("one under the other, and one that is long enough to show how a second line stands under the first one of its item")]),
            new ItemList([T("first do this"), T("then that")], Numbered: true),
            new Heading(3, T("Of the third")),
            new Pairs([new Pair(T("Stands"), T("USL, on the floor")), new Pair(T("Weighs"), [new Datum("52 kg", new NumberValue(52, "kg"))]), new Pair(T("Loop"), T("not judged")) { Verdict = Verdict.CannotBeJudged }, new Pair(T("Load"), T("over its limit")) { Verdict = Verdict.Fails }]) { Columns = 2 },
            new Rule(),
            Rows(id),
            new Columns([
                new ColumnsPart(1, [new Caution(Signal.Warning, T("A stack without pins can fall."), T("Push each pin home."), T("The maker's manual decides."))]),
                new ColumnsPart(1, [new Remark(RemarkWeight.Concern, T("The lead is 2 m short.")) { Detail = T("cables/too-short · take 25 m") }, new Remark(RemarkWeight.Note, T("Good to know: the door is 1.9 m high."))])]),
            new Picture(Shapes(), Q("Each shape once")) { MostHeightMm = 70 },
            new KeepTogether([new Paragraph(T("These two lines")), new Paragraph(T("stay together."))]),
            new Poster("STAGE LEFT", 18),
        ]);

    private static Table Rows(string id) => new(
        [Col("No.", Align.Right) with { Strong = true }, Col("Item") with { Grow = 1 }, Col("Mass", Align.Right, "kg"), Col("Done", Align.Centre), Col("Remark") with { LeastMm = 25 }],
        [
            new RowGroup([
                R(C(Number(1, "1")), C("stereo left"), C(Number(12, "12")), C(new TickBox()), C(new WriteIn())) with { JoinsNext = true },
                R(C(Number(2, "2")), C("stereo right"), C(Number(12, "12")), C(new TickBox()), C(new WriteIn())),
                R(Cell.Empty, C("with it: a clamp"), C(Number(1, "1")), C(new TickBox()), Cell.Empty) with { Kind = RowKind.Sub },
                R(C("HOLD: power off until it is signed")) with { Kind = RowKind.Hold },
                R(C(Number(3, "3")), C("hatched: nobody knows"), C("?") with { Verdict = Verdict.CannotBeJudged }, C(new TickBox()), Cell.Empty),
                R(C(Number(4, "4")), C("framed: over its limit"), C(Number(99, "99"), new Bar(1.2, 0.8)) with { Verdict = Verdict.Fails }, C(new TickBox()), Cell.Empty),
            ]) { Head = T("A group") },
        ])
    {
        Id = $"{id}-table",
        Caption = T("A table"),
        Foot = [R(C("All") with { Span = 2, Align = Align.Left }, C(new Datum("124", new SumValue(124)))) with { Kind = RowKind.Total }],
    };

    private static Scene Shapes() => new(
        "Each shape once",
        [
            new Layer("shapes",
            [
                new Line(new Point(0, 0), new Point(800, 0)) { Pen = Pen.Heavy },
                new Polyline([new Point(0, 200), new Point(300, 500), new Point(600, 200)], Closed: true) { Fill = Fill.Hatch },
                new Rectangle(new Point(1100, 350), 500, 300, 20) { CornerMm = 1, Fill = Fill.Grey },
                new Circle(new Point(1800, 350), 180) { Pen = new Pen(LineWeight.Normal, Dash.Dashed) },
                new Arc(new Point(2400, 500), 350, 200, 140, Wedge: true) { Pen = new Pen(LineWeight.Thin, Dash.Dotted) },
                new Curve(new Point(2900, 500), new Point(3000, 0), new Point(3400, 900), new Point(3500, 300)) { Pen = new Pen(LineWeight.Thin, Dash.Centre) },
                new Dimension(new Point(0, 700), new Point(3500, 700), "3.5 m", -4),
                new Lettering(new Point(1750, -150), "upstage") { Spread = 0.4 },
                new Symbol("box", [new Rectangle(new Point(4100, 350), 500, 500)]) { Label = new Label([new LabelLine("A name"), new LabelLine("and more", TextStyle.Quiet)]) },
            ]),
        ]);
}

