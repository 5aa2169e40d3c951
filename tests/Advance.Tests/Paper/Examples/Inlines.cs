using Advance.Paper.Tree;

namespace Advance.Tests.Paper.Examples;

/// <summary>Short ways to write inlines.</summary>
internal static class Inlines
{
    public static IReadOnlyList<Inline> T(string text) => [new Text(text)];

    public static IReadOnlyList<Inline> B(string text) => [new Text(text, TextStyle.Strong)];

    public static IReadOnlyList<Inline> Q(string text) => [new Text(text, TextStyle.Quiet)];

    public static Text Strong(string text) => new(text, TextStyle.Strong);

    public static Text Quiet(string text) => new(text, TextStyle.Quiet);

    public static Datum Number(double amount, string shown) => new(shown, new NumberValue(amount));

    public static Cell C(params Inline[] inlines) => new(inlines);

    public static Cell C(string text) => new(T(text));

    public static Row R(params Cell[] cells) => new(cells);

    public static Row R(params string[] texts) => new([.. texts.Select(t => t.Length == 0 ? Cell.Empty : C(t))]);

    public static TableColumn Col(string head, Align align = Align.Left, string unit = "") => new(head, T(head)) { Align = align, Unit = unit };

    public static Document Doc(params Sheet[] sheets) =>
        new(new DocumentInfo("Harvest Supper") { Author = "Lower Mill Sound & Light", Issued = new DateOnly(2026, 9, 1) }, sheets);

    public static Sheet OneSheet(params Block[] blocks) => new("s", "Sheet", new SheetSetup(), new SheetHead("Sheet"), SheetFoot.Empty, blocks);
}
