using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Benchmarks;

/// <summary>A hundred pages of a cable list, each cell with words of its own.</summary>
internal static class DenseTables
{
    private static readonly string[] Places = ["USL", "DSR", "FOH", "wing, upper shelf", "under the stage"];

    public static Document Of(int rows) => Doc(new Sheet(
        "cables",
        "Cables",
        new SheetSetup(),
        new SheetHead("Cables") { Lines = [T("Harvest Supper")] },
        SheetFoot.Empty,
        [new Table(
            [Col("Label") with { Strong = true, IsKey = true }, Col("From"), Col("To"), Col("Kind"), Col("Need", Align.Right, "m"), Col("Take"), Col("Note"), Col("Out"), Col("Back")],
            [.. Enumerable.Range(0, rows / 40).Select(g => new RowGroup([.. Enumerable.Range(0, 40).Select(i => Row((g * 40) + i))]) { Head = T($"Loom {g}") })])]));

    private static Row Row(int i) => R(
        C($"S-{i:0000}"), C($"SB{i % 7} out {i % 32}"), C($"amp {i % 90}, {Places[i % 5]}"), C("mic, plug to socket"),
        C(Number(i % 60, $"{i % 60}.5")), C(new Datum($"{i % 60} + 10", new NumberValue(i % 60, "m"))), C(new Text("over the wall "), Quiet($"way {i}")),
        C(new TickBox()), C(new TickBox()));
}
