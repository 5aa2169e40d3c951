using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>The plain text of a piece of a document, as faults, bookmarks and workbooks call it.</summary>
internal static class FirstWords
{
    private const int Most = 60;

    public static string Of(Block block) => Cut(block switch
    {
        Heading heading => Plain(heading.Text),
        Paragraph paragraph => Plain(paragraph.Text),
        Table { Caption.Count: > 0 } table => Plain(table.Caption),
        Table table => string.Join(", ", table.Columns.Select(c => c.Key)),
        Picture picture => picture.Scene.Title,
        Alongside alongside => alongside.Scene.Title,
        Caution caution => Plain(caution.Happens),
        Remark remark => Plain(remark.Text),
        Poster poster => poster.Text,
        _ => "",
    });

    /// <summary>All the words of inlines on one line.</summary>
    public static string Plain(IReadOnlyList<Inline> inlines)
    {
        if (inlines is [Text only])
        {
            return only.Value;
        }

        var text = new System.Text.StringBuilder();
        foreach (var inline in inlines)
        {
            text.Append(Plain(inline));
        }

        return text.ToString().Trim();
    }

    private static string Plain(Inline inline) => inline switch
    {
        Text text => text.Value,
        Datum datum => datum.Shown,
        LineBreak => " ",
        Link link => Plain(link.Text),
        Tag tag => $" {tag.Text} ",
        TickBox tick => tick.Label,
        _ => "",
    };

    private static string Cut(string text) => text.Length <= Most ? text : string.Concat(text.AsSpan(0, Most - 1), "…");
}
