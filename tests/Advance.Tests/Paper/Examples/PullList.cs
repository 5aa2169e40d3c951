using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Examples;

internal static class PullList
{
    private static readonly string[] Items = ["lead, mains 16 A 10 m", "lead, mains 16 A 25 m", "lead, microphone 10 m", "stand, tall boom", "DI box, active", "cable ramp, 1 m", "stage box 22/8", "wedge 12 in"];

    public static Sheet Sheet { get; } = new(
        "pull-list",
        "Pull list",
        new SheetSetup(Class: TypeClass.Floor),
        HarvestSupper.Head("Pull list", "for the shop"),
        HarvestSupper.Foot("by shelf and case"),
        [new Table(
            [Col("✓") with { IsKey = true }, Col("Shelf") with { Strong = true }, Col("Need", Align.Right), Col("Spare", Align.Right), Col("Total", Align.Right) with { Strong = true }, Col("Item") with { Grow = 1 }, Col("Case"), Col("Remark") with { LeastMm = 25 }],
            [Group("Power", 14), Group("Sound", 19), Group("Stage", 9)]) { Caption = T("By department and shelf") }]);

    private static RowGroup Group(string name, int count)
    {
        var rows = new List<Row>();
        for (var i = 0; i < count; i++)
        {
            rows.Add(R(C(new TickBox()), C($"{name[0]}{i / 4}-{i % 4}"), C(Number(i + 2, $"{i + 2}")), C(Number(1, "1")), C(Number(i + 3, $"{i + 3}")), C(Items[i % Items.Length]), C($"case {i / 3}"), C(new WriteIn(20))));
            if (i % 6 == 2)
            {
                rows.Add(R(C(new TickBox()), Cell.Empty, C(Number(1, "1")), Cell.Empty, C(Number(1, "1")), C(Quiet("with it: lock and key")), Cell.Empty, Cell.Empty) with { Kind = RowKind.Sub });
            }
        }

        if (name == "Sound")
        {
            rows.Insert(4, R(C("HOLD: nothing leaves the shelf until the test date is read and signed")) with { Kind = RowKind.Hold });
        }

        return new RowGroup(rows) { Head = T($"{name} · {count} lines") };
    }
}

