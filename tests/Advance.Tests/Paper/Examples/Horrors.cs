using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Examples;

/// <summary>A gallery of what nobody would write and somebody will.</summary>
internal static class Horrors
{
    private static readonly string SixtyLetters = string.Concat(Enumerable.Repeat("abcdefghij", 6));

    public static Document Document { get; } = Doc(
        Of("words", "Words", new Paragraph(T(SixtyLetters)), new Paragraph(T("Λάμπα, лампа, lámpa, 日本語, שלום עולם, drum 🥁 and 👩‍🔧")), Narrow()),
        Of("one-column", "One column of 4,000 rows", new Table([Col("n", Align.Right)], [new RowGroup([.. Enumerable.Range(1, 4000).Select(i => R(C(Number(i, $"{i}"))))])])),
        Of("forty-columns", "Forty columns", Forty()),
        Of("empty", "Empty", new Table([Col("a"), Col("b")], []) { WhenEmpty = Q("nothing to pull") }, new Table([], []), new Pairs([]), new Columns([]), new Paragraph([])),
        Of("tall", "A row of two pages", new Table([Col("a"), Col("b")], [new RowGroup([R("x", string.Join(' ', Enumerable.Repeat("many words in one cell", 700)))])])),
        Of("one-spot", "Ten labels on one spot", new Picture(OneSpot(), Q("ten labels"))),
        Of("crowd", "200 symbols", new Picture(Crowd(200), Q("two hundred"))),
        Of("head", string.Join(' ', Enumerable.Repeat("A very long title", 8)), new Paragraph(T("under it"))),
        Of("deep", "Deep", Deep(30)),
        Of("nothing", "Nothing"));

    public static Scene OneSpot() => new("Ten labels on one spot", [new Layer("s", [.. Enumerable.Range(0, 10).Select(i => new Symbol($"s{i}", [new Circle(new Point(i * 2, 0), 40)]) { Label = new Label([new LabelLine($"wedge {i}"), new LabelLine("floor", TextStyle.Quiet)]) }), new Rectangle(new Point(0, 0), 6000, 4000)])]);

    /// <summary>Symbols by a fixed rule that looks like chance.</summary>
    public static Scene Crowd(int count)
    {
        var symbols = new List<Shape>();
        var seed = 12345u;
        int Next(int most)
        {
            seed = (seed * 1664525u) + 1013904223u;
            return (int)((seed >> 8) % (uint)most);
        }

        for (var i = 0; i < count; i++)
        {
            var at = new Point(Next(12_000), Next(8000));
            Shape shape = i % 2 == 0 ? new Circle(at, 60 + Next(160)) : new Rectangle(at, 150 + Next(400), 100 + Next(300), Next(90));
            symbols.Add(new Symbol($"s{i:000}", [shape]) { Label = new Label([new LabelLine($"item {i}")]) });
        }

        return new Scene("200 symbols", [new Layer("s", symbols)]);
    }

    private static Sheet Of(string id, string title, params Block[] blocks) =>
        new(id, title, new SheetSetup(), HarvestSupper.Head(title, "for nobody"), HarvestSupper.Foot("a gallery"), blocks);

    private static Columns Narrow() => new([.. Enumerable.Range(0, 9).Select(i => new ColumnsPart(1, [new Paragraph(T($"{i} {SixtyLetters} and some words more"))]))]);

    private static Table Forty() => new(
        [.. Enumerable.Range(0, 40).Select(i => Col(i == 0 ? "Channel" : $"Output {i}") with { IsKey = i == 0 })],
        [new RowGroup([.. Enumerable.Range(0, 30).Select(r => R([.. Enumerable.Range(0, 40).Select(i => i == 0 ? $"ch {r}" : $"{r}×{i}")]))])]);

    private static Block Deep(int levels) => levels == 0 ? new Paragraph(T("bottom")) : new KeepTogether([new Paragraph(T($"level {levels}")), Deep(levels - 1)]);
}
