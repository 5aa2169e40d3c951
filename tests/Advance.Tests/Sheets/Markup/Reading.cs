using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Sheets.Markup;
using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Markup;

/// <summary>Reads markup that stands in the tests.</summary>
internal static class Reading
{
    public static readonly Scene Scene = new("an example", []);

    public const string Opens = "<section class=\"sheet\" id=\"s\" title=\"T\" data-for=\"x\" data-readers=\"all\">";

    private static readonly Drawing[] Drawings =
    [
        new("example", ["act", "note"], _ => Scene),
        new("stage-plot", ["act"], asked => asked.GetValueOrDefault("act") == "The Lot" ? Scene : null),
    ];

    public static SheetsRead Read(string markup) => Read(RenderedTemplate.Of("t", markup));

    public static SheetsRead Read(RenderedTemplate rendered) => SheetReader.Read(rendered, Drawings);

    public static SheetsRead ReadInSheet(string blocks) => Read(Opens + blocks + "</section>");

    public static MarkedUpSheet Sheet(string markup)
    {
        var read = Read(markup);
        Assert.Empty(read.Faults);
        return Assert.Single(read.Sheets);
    }

    public static IReadOnlyList<Block> Blocks(string blocks) => Sheet(Opens + blocks + "</section>").Blocks;

    public static T Block<T>(string block)
        where T : Block => Assert.IsType<T>(Assert.Single(Blocks(block)));

    /// <summary>The pieces of a paragraph.</summary>
    public static IReadOnlyList<Inline> Line(string line) => Block<Paragraph>($"<p>{line}</p>").Text;
}
