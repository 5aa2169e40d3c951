using System.Text;
using Advance.Reading.Files;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;

namespace Advance.Reading.Tables;

/// <summary>A table in a file of separated values, quoted as RFC 4180 says. The separator is whichever of comma, semicolon and tab the
/// headings hold most of.</summary>
internal sealed class CsvTable
{
    private readonly TextSource source;
    private readonly Reader reader;
    private readonly string text;
    private readonly char separator;
    private int at;

    private CsvTable(TextSource source, Reader reader)
    {
        this.source = source;
        this.reader = reader;
        text = source.Text;
        separator = Separator(source.Line(1));
    }

    /// <summary>Reads a file; null where it has no headings.</summary>
    public static Grid? Read(TextSource source, Reader reader) => new CsvTable(source, reader).Read();

    private static char Separator(ReadOnlySpan<char> headings)
    {
        var (comma, semicolon, tab) = (headings.Count(','), headings.Count(';'), headings.Count('\t'));
        return semicolon > comma && semicolon >= tab ? ';' : tab > comma ? '\t' : ',';
    }

    private Grid? Read()
    {
        var rows = new List<IReadOnlyList<CellNode>>();
        while (at < text.Length)
        {
            var row = ReadRow();
            if (row.Any(cell => !cell.IsBlank))
            {
                rows.Add(row);
            }
        }

        return rows.Count == 0 ? null : new(WithoutBlankEnd(rows[0]), rows[1..], CountsCells: false);
    }

    // Programs write separators to the last column that ever held something.
    private static List<CellNode> WithoutBlankEnd(IReadOnlyList<CellNode> row)
    {
        var count = row.Count;
        while (count > 0 && row[count - 1].IsBlank)
        {
            count--;
        }

        return [.. row.Take(count)];
    }

    private List<CellNode> ReadRow()
    {
        var cells = new List<CellNode>();
        do
        {
            cells.Add(ReadCell());
        }
        while (at < text.Length && text[at++] == separator);
        return cells;
    }

    // Leaves the place at the separator or line end after the cell.
    private CellNode ReadCell()
    {
        var start = at;
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }

        if (at < text.Length && text[at] == '"')
        {
            return ReadQuoted();
        }

        at = EndOfCell();
        var raw = text.AsSpan(start, at - start);
        var lead = raw.Length - raw.TrimStart().Length;
        var cell = raw.Trim().ToString();
        return new(cell, source.MarkAt(cell.Length == 0 ? start : start + lead, Math.Max(1, cell.Length)));
    }

    private int EndOfCell()
    {
        var length = text.AsSpan(at).IndexOfAny(separator, '\n');
        return length < 0 ? text.Length : at + length;
    }

    private CellNode ReadQuoted()
    {
        var start = at++;
        var value = new StringBuilder();
        var isClosed = false;
        while (at < text.Length && !isClosed)
        {
            var isQuote = text[at] == '"';
            isClosed = isQuote && (at + 1 >= text.Length || text[at + 1] != '"');
            if (!isClosed)
            {
                value.Append(text[at]);
                at += isQuote ? 1 : 0;
            }

            at++;
        }

        var mark = source.MarkAt(start, at - start);
        if (!isClosed)
        {
            reader.Fault(TableFindings.UnclosedQuote(mark with { Length = 1 }));
        }

        var end = EndOfCell();
        if (!text.AsSpan(at, end - at).IsWhiteSpace())
        {
            reader.Fault(TableFindings.AfterQuote(source.MarkAt(at, end - at)));
        }

        var inStep = value.Length == at - start - 2;
        at = end;
        var cell = value.ToString().ReplaceLineEndings(" ");
        return new(cell.Trim(), mark, inStep ? 1 + cell.Length - cell.TrimStart().Length : ScalarNode.Unmapped);
    }
}
