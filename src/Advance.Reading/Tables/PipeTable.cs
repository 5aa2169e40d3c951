using Advance.Reading.Files;
using Advance.Reading.Yaml;

namespace Advance.Reading.Tables;

/// <summary>
/// A table drawn with | between its cells in a block of lines. It is taken from the file itself, since only there each cell has its
/// place. A | at both ends of the lines and a ruled line below the headings do no harm; \| is a | inside a cell.
/// </summary>
internal static class PipeTable
{
    /// <summary>Reads the table of a block; null where the block is blank.</summary>
    public static Grid? Read(TextSource source, BlockNode block)
    {
        var lines = new List<IReadOnlyList<CellNode>>();
        var (indent, isFramed) = (0, false);
        for (var line = block.FirstLine; line <= block.LastLine; line++)
        {
            var text = source.Line(line);
            if (text.IsWhiteSpace() || IsRule(text))
            {
                continue;
            }

            if (lines.Count == 0)
            {
                // Only the headings tell: in a row below them the first cell may be blank.
                indent = text.Length - text.TrimStart().Length;
                isFramed = text[indent] == '|';
            }

            lines.Add(Cells(source, line, Math.Min(indent, text.Length - text.TrimStart().Length), isFramed));
        }

        return lines.Count == 0 ? null : new(lines[0], lines[1..], CountsCells: false);
    }

    private static bool IsRule(ReadOnlySpan<char> line) => line.IndexOfAnyExcept(" |-:+") < 0 && line.Contains('-') && line.Contains('|');

    private static List<CellNode> Cells(TextSource source, int line, int start, bool isFramed)
    {
        var text = source.Line(line);
        var end = text.TrimEnd().Length;
        if (isFramed)
        {
            start = text.Length - text.TrimStart().Length;
            start += text[start] == '|' ? 1 : 0;
            end -= end > start && text[end - 1] == '|' && text[end - 2] != '\\' ? 1 : 0;
        }

        var cells = new List<CellNode>();
        while (start <= end)
        {
            var stop = NextPipe(text, start, end);
            cells.Add(Cell(source, line, start, stop));
            start = stop + 1;
        }

        return cells;
    }

    private static int NextPipe(ReadOnlySpan<char> text, int start, int end)
    {
        for (var at = start; at < end; at++)
        {
            if (text[at] == '|' && (at == start || text[at - 1] != '\\'))
            {
                return at;
            }
        }

        return end;
    }

    private static CellNode Cell(TextSource source, int line, int start, int stop)
    {
        var raw = source.Line(line)[start..stop];
        var lead = raw.IsWhiteSpace() ? Math.Min(raw.Length, start > 0 && source.Line(line)[start - 1] == '|' ? 1 : 0) : raw.Length - raw.TrimStart().Length;
        var text = raw.Trim().ToString();
        var plain = text.Replace("\\|", "|", StringComparison.Ordinal);
        var at = source.MarkAt(source.StartOf(line) + start + lead, Math.Max(1, text.Length));
        return new(plain, at, plain.Length == text.Length ? 0 : ScalarNode.Unmapped);
    }
}
