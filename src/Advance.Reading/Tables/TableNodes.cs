using Advance.Reading.Files;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;

namespace Advance.Reading.Tables;

/// <summary>Gets the rows of a table from wherever they were written.</summary>
internal sealed class TableNodes(Columns columns)
{
    /// <summary>The most bytes of a file with a table.</summary>
    public const int MostBytes = 4_000_000;

    /// <summary>Whether a text is the name of a file with a table.</summary>
    public static bool NamesFile(ScalarNode scalar) => scalar is not BlockNode && IsTable(scalar.Text);

    /// <summary>Whether a file holds a table, by its name.</summary>
    public static bool IsTable(string file) => IsCsv(file) || IsWorkbook(file);

    /// <summary>The rows as maps, or whatever else stands where a row should; null where a finding has been made instead.</summary>
    public IReadOnlyList<Node>? Read(Node node, Reader reader) => node switch
    {
        ListNode list => list.Items,
        BlockNode block => Turn(ReadBlock(block, reader), reader),
        _ => Turn(ReadFile((ScalarNode)node, reader), reader),
    };

    /// <summary>Reads a file of rows; null where a finding has been made instead.</summary>
    /// <param name="path">The file, inside the tree.</param>
    /// <param name="named">Where it was named.</param>
    /// <param name="reader">The way to the file.</param>
    public IReadOnlyList<Node>? ReadFile(string path, ScalarNode named, Reader reader) => Turn(Open(path, named, reader), reader);

    private IReadOnlyList<Node>? Turn(Grid? grid, Reader reader) => grid is null ? null : columns.Turn(grid, reader);

    private static Grid? ReadBlock(BlockNode block, Reader reader)
    {
        if (block.IsFolded)
        {
            reader.Fault(TableFindings.Folded(block.At));
            return null;
        }

        var grid = reader.Sources.TryGet(block.At.File, out var source) ? PipeTable.Read((TextSource)source, block) : null;
        if (grid is null)
        {
            reader.Fault(TableFindings.NoHeadings(block.At));
        }

        return grid;
    }

    private static Grid? ReadFile(ScalarNode named, Reader reader)
    {
        if (!TreePath.TryResolve(named.At.File, named.Text, out var path))
        {
            reader.Fault(FileFindings.Outside(named.At, named.Text));
            return null;
        }

        return Open(path, named, reader);
    }

    private static Grid? Open(string path, ScalarNode named, Reader reader)
    {
        var read = reader.Files.Read(path, MostBytes);
        if (read.Fault != FileFault.None)
        {
            reader.Fault(FileFindings.NotRead(named.At, named.Text, read.Fault, MostBytes));
            return null;
        }

        if (IsWorkbook(path))
        {
            return WorkbookTable.Read(path, read.Bytes, named.At, reader);
        }

        if (TextDecoder.Decode(path, read.Bytes.Span, reader.Findings) is not { } source)
        {
            return null;
        }

        reader.Sources.Add(source);
        var grid = CsvTable.Read(source, reader);
        if (grid is null)
        {
            reader.Fault(FileFindings.Empty(path));
        }

        return grid;
    }

    private static bool IsCsv(string text) => text.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);

    private static bool IsWorkbook(string text) => text.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase);
}
