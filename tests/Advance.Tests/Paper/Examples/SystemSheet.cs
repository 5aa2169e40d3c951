using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Examples;

internal static class SystemSheet
{
    public static Sheet Sheet { get; } = new(
        "system-main-sr",
        "System, Main SR",
        new SheetSetup(Class: TypeClass.Floor),
        HarvestSupper.Head("System, Main SR", "for the PA crew"),
        HarvestSupper.Foot("boxes counted from the floor"),
        [
            new Alongside(Scene(), [new Band(0, 550), new Band(570, 1120), new Band(1160, 1760)], Boxes()) { PictureShare = 0.39 },
            new Pairs(
            [
                new Pair(T("Stands"), T("4.6 m off centre SR, DS 0.4 m, on the floor")),
                new Pair(T("Aim"), T("toe-in 5°")),
                new Pair(T("Hands"), T("two for the sub, 52 kg")),
                new Pair(T("Weight"), T("114 kg")),
                new Pair(T("Tips at"), T("16.4° (over a side)")),
                new Pair(T("Indoors"), T("no wind figure needed")),
                new Pair(T("Crossing"), T("100 Hz, in the sub")),
                new Pair(T("Address"), T("192.168.7.11 to .13")),
                new Pair(T("Serials"), [new WriteIn(20)]),
            ]) { Columns = 3 },
            new Caution(Signal.Warning, T("A stack without its pins can fall on people."), T("Push each pin home and pull at it before you let go."), T("The maker's manual decides.")),
        ]);

    private static Table Boxes() => new(
        [Col("Position") with { Strong = true }, Col("Unit"), Col("Done")],
        [new RowGroup(
        [
            Box(3, "Main SR top 2", "top-10", "upside-down", "2 × pair link, 4 pins", "from top 1, P: 2 m → –", "from top 1 → –"),
            Box(2, "Main SR top 1", "top-10", "upright", "1 × stack foot, 2 pins, strap", "from sub, high-passed, 2 m → to top 2", "from sub → to top 2"),
            Box(1, "Main SR sub", "sub-18", "grilles to audience", "stands on rubber mat", "DRIVE out 1, S-03 25 m → high-passed to top 1", "PD1-1, P-02 10 m → to top 1"),
        ])])
    { ShowsHead = false };

    private static Row Box(int position, string name, string item, string way, string joined, string signal, string mains) => R(
        C(new Text($"{position}", TextStyle.Large)),
        C(new Text(name, TextStyle.Strong | TextStyle.Large), new LineBreak(), new Text($"{item} · "), Strong(way), new LineBreak(),
            Quiet("joined below by "), new Text(joined), new LineBreak(), Quiet("signal "), new Text(signal), new LineBreak(), Quiet("mains "), new Text(mains)),
        C(new TickBox("built"), new LineBreak(), new TickBox("pins"), new LineBreak(), new TickBox("linked"), new LineBreak(), new TickBox("sound")));

    private static Scene Scene() => new(
        "The stack from the front: a sub on the floor and two tops on it",
        [
            new Layer("floor", [new Line(new Point(-550, 1760), new Point(600, 1760)) { Pen = Pen.Heavy }]),
            new Layer("boxes",
            [
                Box("sub", 0, 1460, 600, 600, new Circle(new Point(0, 1460), 210) { Pen = Pen.Thin }),
                new Rectangle(new Point(0, 1140), 220, 40) { Fill = Fill.Black, Pen = Pen.None },
                Box("top-1", 0, 845, 360, 550, new Circle(new Point(0, 940), 120) { Pen = Pen.Thin }),
                Box("top-2", 0, 275, 360, 550, new Circle(new Point(0, 180), 120) { Pen = Pen.Thin }),
                new Symbol("centre", [new Circle(new Point(0, 1000), 22) { Fill = Fill.Black }])
                {
                    Label = new Label([new LabelLine("centre of", TextStyle.Quiet), new LabelLine("gravity 0.76", TextStyle.Quiet)]),
                },
            ]),
            new Layer("dimensions", [new Dimension(new Point(300, 1760), new Point(300, 0), "1.76 m", -8)]),
        ])
    { Scaling = Scaling.Fill };

    private static Symbol Box(string id, double x, double y, double w, double h, Shape inner) => new(id, [new Rectangle(new Point(x, y), w, h), inner]);
}
