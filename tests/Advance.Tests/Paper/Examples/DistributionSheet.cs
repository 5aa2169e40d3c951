using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Examples;

internal static class DistributionSheet
{
    public static Sheet Sheet { get; } = new(
        "power-pd1",
        "Distribution PD1",
        new SheetSetup(Orientation: Orientation.Landscape),
        HarvestSupper.Head("Distribution PD1", "for the electrician, and for the lid of the box"),
        HarvestSupper.Foot("arithmetic for a licensed electrician to check, not a certificate"),
        [Facts(), Circuits(), Cautions()]);

    private static Columns Facts() => new([
        new ColumnsPart(3.2, [new Pairs(
        [
            new Pair(T("Stands"), T("USL, on the floor, 1.2 m from the wall")),
            new Pair(T("Fed from"), T("service A, 32 A blue, kitchen wall")),
            new Pair(T("Feeder"), T("32 A lead 25 m, 6 mm², label P-01")),
            new Pair(T("Supply"), T("230 V single-phase, 50 Hz")),
            new Pair(T("Earthing"), [new Text("TN-S "), new Tag("TBC caretaker 4 Sep")]),
            new Pair(T("Loop at inlet"), T("not judged: supply loop unknown")) { Verdict = Verdict.CannotBeJudged },
            new Pair(T("Residual device"), T("30 mA, type A, at each outlet")),
            new Pair(T("Also on this service"), T("kitchen urn 13.0 A, hot cupboard 13.0 A")),
            new Pair(T("In use, with them"), T("31.2 of 32 A, all evening")),
        ]) { Columns = 3 }]),
        new ColumnsPart(1, [new Remark(RemarkWeight.Stop, T("The kitchen draws 26 A of these 32 A from 17:00. In use we add 5.2 A, at most 18.4 A: the device trips."))
        {
            Detail = T("power/shared-with-strangers · move PD1 to service B, or have the urn on another ring. Not accepted."),
        }])]);

    private static Table Circuits() => new(
        [
            Col("Cct") with { Strong = true, IsKey = true },
            Col("Outlet"),
            Col("Device"),
            Col("RCD", Align.Right, "mA"),
            Col("Feeds, in this order"),
            Col("Where"),
            Col("Lead"),
            Col("In use", Align.Right, "A") with { Strong = true },
            Col("At most", Align.Right, "A"),
            Col("of device", Align.Right, "%"),
            Col("Drop", Align.Right, "%"),
            Col("At end", Align.Right, "V"),
            Col("On", Align.Right),
            Col("Dead"),
            Col("RCD test"),
            Col("Live V"),
            Col("A measured"),
        ],
        [
            new RowGroup(
            [
                Circuit(1, "Main SR", "sub-18 → top-10 → top-10", "linked box to box, locking mains 20 A", "SR, floor", ("P-02 10 m", "2.5 mm²"), (2.5, 9.1, 16, 0.6, 228.6), 3),
                Circuit(2, "Main SL", "sub-18 → top-10 → top-10", "linked box to box, locking mains 20 A", "SL, floor", ("P-03 15 m", "2.5 mm²"), (2.5, 9.1, 16, 0.8, 228.2), 4),
                Circuit(3, "Stage mains USC", "bass amp, keys rack, laptop", "four-way 5 m, label P-05", "USC", ("P-04 10 m", "1.5 mm²"), (1.9, 4.4, 12, 0.7, 228.4), 2),
                Circuit(4, "SB1, DRIVE", "stage rack", "battery backup in the rack", "USR", ("P-06 10 m", "1.5 mm²"), (0.7, 1.2, 4, 0.2, 229.5), 1),
                Circuit(5, "FOH", "desk-32, lamp, talkback", "along the south wall under two ramps", "FOH", ("P-07 25+10 m", "2.5 mm²"), (0.9, 1.6, 6, 0.5, 228.9), 1),
                R(C("6"), C("16 A blue"), C("C16"), C(Number(30, "30")), C(Quiet("spare")), Cell.Empty, Cell.Empty, C("–"), C("–"), Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty, C(new TickBox()), C(new TickBox()), Cell.Empty, Cell.Empty),
            ]),
        ])
    {
        Id = "circuits",
        Foot =
        [
            new Row(
            [
                C("PD1 altogether") with { Span = 7 }, Sum(8.5, "8.5"), Sum(25.4, "25.4"), C(Number(27, "27")),
                C(Quiet("neutral as line · leakage 6.1 mA in all, most behind one device 3.4 of 9 mA allowed · power-up in the order of column On, 10 s apart")) with { Span = 7, Align = Align.Left },
            ]) { Kind = RowKind.Total },
        ],
    };

    private static Cell Sum(double amount, string shown) => C(new Datum(shown, new SumValue(amount)));

    private static Row Circuit(
        int number, string name, string chain, string note, string where, (string Lead, string Size) lead,
        (double InUse, double AtMost, int Percent, double Drop, double End) figures, int on) =>
        new Row(
        [
            C(Number(number, $"{number}")), C("16 A blue"), C("C16"), C(Number(30, "30")),
            C(Strong(name), new Text($" {chain}"), new LineBreak(), Quiet(note)),
            C(where), C(new Datum(lead.Lead, new NumberValue(10, "m")), new LineBreak(), Quiet(lead.Size)),
            C(Number(figures.InUse, $"{figures.InUse:0.0}")), C(Number(figures.AtMost, $"{figures.AtMost:0.0}")),
            C(Number(figures.Percent, $"{figures.Percent}"), new Bar(figures.Percent / 100.0, 0.8)),
            C(Number(figures.Drop, $"{figures.Drop:0.0}")), C(Number(figures.End, $"{figures.End:0.0}")), C(Number(on, $"{on}")),
            C(new TickBox()), C(new TickBox()), C(new WriteIn(18)), C(new WriteIn(18)),
        ])
        { Id = $"pd1-{number}" };

    private static Columns Cautions() => new([
        new ColumnsPart(1, [new Caution(Signal.Danger, T("Dead test, then live: polarity, earth, loop, residual trip, before any load is plugged in."), T("Write it here."), T("A licensed electrician decides."))]),
        new ColumnsPart(1, [new Caution(Signal.Danger, T("Two supplies meet on this stage."), T("Keep their metalwork 2.5 m apart or bond it; never join their neutrals."), T("A licensed electrician decides."))]),
        new ColumnsPart(1, [
            new Paragraph([Quiet("Tested by "), new WriteIn(40), Quiet(" at "), new WriteIn(15)]),
            new Paragraph([Quiet("Energised by "), new WriteIn(40), Quiet(" at "), new WriteIn(15)]),
        ])]);
}
