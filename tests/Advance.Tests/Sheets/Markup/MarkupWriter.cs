using System.Globalization;
using System.Text;
using Advance.Paper.Tree;

namespace Advance.Tests.Sheets.Markup;

/// <summary>Writes a tree as markup: the way back, made without anything of the reader's.</summary>
internal static class MarkupWriter
{
    public static string Write(IEnumerable<Block> blocks) => string.Concat(blocks.Select(Write));

    private static string Write(Block block)
    {
        var id = Attribute("id", block.Id);
        return block switch
        {
            Heading heading => Element($"h{heading.Level}", id, Write(heading.Text)),
            Paragraph paragraph => Element("p", id + Attribute("data-align", Word(paragraph.Align)), Write(paragraph.Text)),
            Poster poster => Element("p", $" class='poster' data-mm='{Number(poster.MostMm)}'{id}", Escape(poster.Text)),
            ItemList list => Element(list.Numbered ? "ol" : "ul", id, Concat(list.Items, item => Element("li", "", Write(item)))),
            Pairs pairs => Element("dl", $"{id} data-columns='{pairs.Columns}'", Concat(pairs.Items, Write)),
            Rule => Element("hr", id, ""),
            PageBreak => Element("hr", " class='page-break'" + id, ""),
            Space space => Element("div", $" class='space' data-mm='{Number(space.Mm)}'{id}", ""),
            KeepTogether keep => Element("div", " class='keep'" + id, Write(keep.Blocks)),
            Columns columns => Element("div", " class='columns'" + id, Concat(columns.Parts, Write)),
            Caution caution => Element("aside", $" class='{Word(caution.Signal)}'{id}", Sentences(caution.Happens, caution.Do, caution.Decides)),
            Remark remark => Element("aside", $" class='{Word(remark.Weight)}'{id}", Sentences(remark.Text, remark.Detail)),
            Picture picture => Element(
                "figure",
                " data-drawing='example'" + id + Attribute("data-most-mm", Number(picture.MostHeightMm)),
                Element("figcaption", "", Write(picture.Caption))),
            Table table => Write(table, []),
            Alongside along => Element(
                "div",
                $" class='alongside' data-share='{Number(along.PictureShare)}'{id}",
                Element("figure", " data-drawing='example'", "") + Write(along.Table, new(along.Bands))),
            _ => throw new NotSupportedException(block.GetType().Name),
        };
    }

    private static string Write(Table table, Queue<Band> bands)
    {
        var body = new StringBuilder();
        foreach (var group in table.Groups)
        {
            var id = Attribute("id", group.Id);
            var head = group.Head.Count > 0 ? Element("tr", " class='group'" + id, Element("td", "", Write(group.Head))) : "";
            body.Append(Element("tbody", "", head + Concat(group.Rows, row => Write(row, bands.TryDequeue(out var band) ? band : null))));
        }

        var empty = table.WhenEmpty.Count > 0 ? Element("tbody", "", Element("tr", " class='when-empty'", Element("td", "", Write(table.WhenEmpty)))) : "";
        return Element(
            "table",
            Attribute("id", table.Id),
            Element("caption", "", Write(table.Caption))
            + Element("colgroup", "", Concat(table.Columns, Write))
            + Element("thead", table.ShowsHead ? "" : " class='off-paper'", Element("tr", "", Concat(table.Columns, column => Element("th", "", Write(column.Head)))))
            + body
            + empty
            + Element("tfoot", "", Concat(table.Foot, row => Write(row, null))));
    }

    private static string Write(ColumnsPart part) => Element("div", $" data-share='{Number(part.Share)}'", Write(part.Blocks));

    private static string Write(TableColumn column) => Element(
        "col",
        $" class='{(column.Strong ? "strong" : "")} {(column.IsKey ? "key" : "")}' data-align='{Word(column.Align)}' data-grow='{Number(column.Grow)}'"
        + Attribute("data-key", column.Key)
        + Attribute("data-unit", column.Unit)
        + Attribute("data-least", Number(column.LeastMm))
        + Attribute("data-most", Number(column.MostMm)),
        "");

    private static string Write(Row row, Band? band)
    {
        var kind = row.Kind == RowKind.Normal ? "" : Word(row.Kind);
        var level = band is { } part ? $" data-top='{Number(part.Top)}' data-bottom='{Number(part.Bottom)}'" : "";
        return Element("tr", $" class='{kind} {(row.JoinsNext ? "joins" : "")}'{level}{Attribute("id", row.Id)}", string.Concat(row.Cells.Select(Write)));
    }

    private static string Write(Cell cell)
    {
        var value = cell.Value is null ? "" : Attribute("data-value", Machine(cell.Value)) + Attribute("data-unit", (cell.Value as NumberValue)?.Unit);
        return Element("td", $" colspan='{cell.Span}' data-verdict='{Word(cell.Verdict)}'{value}", Write(cell.Text));
    }

    private static string Write(Pair pair) => Element("dt", "", Write(pair.Name)) + Element("dd", Attribute("data-verdict", Word(pair.Verdict)), Write(pair.Text));

    private static string Write(IEnumerable<Inline> line) => string.Concat(line.Select(Write));

    private static string Write(Inline piece) => piece switch
    {
        Text text => Styled(text.Style, Escape(text.Value)),
        LineBreak => "<br/>",
        Link link => Element("a", Attribute("href", link.Target), Write(link.Text)),
        PageOf page => Styled(page.Style, Element("a", " class='page'" + Attribute("href", "#" + page.Target), "")),
        Tag tag => Element("mark", "", Escape(tag.Text)),
        TickBox { Label: "" } => "<input type='checkbox'/>",
        TickBox tick => Element("label", "", "<input type='checkbox'/>" + Escape(tick.Label)),
        WriteIn write => Element("span", $" class='write' data-mm='{Number(write.LeastMm)}'", ""),
        Bar bar => Element("meter", $" value='{Number(bar.Share)}'" + Attribute("high", Number(bar.Policy)), ""),
        Datum datum => Styled(datum.Style, Write(datum)),
        _ => throw new NotSupportedException(piece.GetType().Name),
    };

    private static string Write(Datum datum) => datum.Value switch
    {
        NumberValue number => Element(
            "data",
            Attribute("value", Machine(number)) + Attribute("data-unit", number.Unit) + Attribute("data-decimals", number.Decimals?.ToString(CultureInfo.InvariantCulture)),
            Escape(datum.Shown)),
        SumValue sum => Element("data", " class='sum'" + Attribute("value", Machine(sum)) + Attribute("data-unit", sum.Unit), Escape(datum.Shown)),
        var time => Element("time", Attribute("datetime", Machine(time)), Escape(datum.Shown)),
    };

    private static string Machine(MachineValue value) => value switch
    {
        NumberValue number => Number(number.Amount)!,
        SumValue sum => Number(sum.Amount)!,
        DateValue date => date.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        TimeValue time => time.Time.ToString("HH:mm:ss.fffffff", CultureInfo.InvariantCulture),
        MomentValue moment => moment.At.ToString("yyyy-MM-ddTHH:mm:ss.fffffff", CultureInfo.InvariantCulture),
        _ => throw new NotSupportedException(value.GetType().Name),
    };

    private static string Styled(TextStyle style, string markup)
    {
        var strong = style.HasFlag(TextStyle.Strong) ? Element("strong", "", markup) : markup;
        var quiet = style.HasFlag(TextStyle.Quiet) ? Element("small", "", strong) : strong;
        return style.HasFlag(TextStyle.Large) ? Element("span", " class='large'", quiet) : quiet;
    }

    private static string Sentences(params IReadOnlyList<Inline>[] sentences) => string.Concat(sentences.Select(sentence => Element("p", "", Write(sentence))));

    private static string Concat<T>(IEnumerable<T> items, Func<T, string> write) => string.Concat(items.Select(write));

    private static string Element(string name, string attributes, string contents) => $"\n<{name}{attributes}>{contents}</{name}>\n".Trim();

    private static string Attribute(string name, string? value) => value is null ? "" : $" {name}='{Escape(value)}'";

    private static string Word<T>(T word)
        where T : struct, Enum => word switch
        {
            Verdict.CannotBeJudged => "cannot-be-judged",
            _ => word.ToString().ToLowerInvariant(),
        };

    private static string? Number(double? number) => number?.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Each letter that is not plain as a number, but for surrogates, which numbers have only in pairs.</summary>
    private static string Escape(string text) =>
        string.Concat(text.Select(letter => char.IsAsciiLetterOrDigit(letter) || char.IsSurrogate(letter) ? letter.ToString() : $"&#x{(int)letter:X};"));
}
