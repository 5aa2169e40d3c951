using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;

namespace Advance.Reading.Tables;

/// <summary>
/// Rows of one kind, written as a table in a block of lines, as a list of maps, or as the name of a CSV or XLSX file; all are equal.
/// Where the rows are named things, a map by name will do as well.
/// </summary>
/// <param name="row">One row.</param>
/// <param name="name">The heading over the names of the things; null where rows have no names.</param>
internal sealed class TableShape<T>(RecordShape<T> row, string? name = null) : Shape<IReadOnlyList<T>>, ITable
    where T : notnull
{
    private readonly ThingsShape<T> byName = new(row);
    private readonly TableNodes nodes = new(new(row.Fields, name, row.Name));

    /// <inheritdoc/>
    public string? NameKey => name;

    /// <inheritdoc/>
    public override string Words => "a table";

    /// <inheritdoc/>
    public override string Takes => $"table of {row.Takes}";

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [row];

    /// <inheritdoc/>
    public override bool Fits(Node node) => node is ListNode or BlockNode || (node is ScalarNode scalar && TableNodes.NamesFile(scalar)) || (node is MapNode && name is not null);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc)
    {
        var choices = new JsonArray(TableText.Schema(), new JsonObject { ["type"] = "array", ["items"] = book.Record(row, name) });
        if (name is not null)
        {
            choices.Add((JsonNode)byName.Schema(book, Tbc.AfterValue));
        }

        return book.Open(tbc, new() { ["anyOf"] = choices });
    }

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices)
    {
        if (name is not null && choices.Next(2) == 0)
        {
            return byName.Sample(choices);
        }

        var names = choices.SomeNames();
        var rows = new JsonArray([.. names.Select(one => SampleRow(one, choices))]);
        return choices.Next(2) == 0 ? rows : (JsonNode?)TableText.Draw(rows) ?? rows;
    }

    /// <summary>Reads a file of rows.</summary>
    /// <param name="path">The file, inside the tree.</param>
    /// <param name="named">Where it was named.</param>
    /// <param name="reader">The way to the file.</param>
    /// <param name="value">The rows.</param>
    public bool TryReadFile(string path, ScalarNode named, Reader reader, [NotNullWhen(true)] out IReadOnlyList<T>? value)
    {
        value = null;
        return nodes.ReadFile(path, named, reader) is { } rows && ReadRows(rows, reader, out value);
    }

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        if (node is MapNode)
        {
            return byName.TryRead(node, reader, out value);
        }

        value = null;
        return nodes.Read(node, reader) is { } rows && ReadRows(rows, reader, out value);
    }

    private bool ReadRows(IReadOnlyList<Node> rows, Reader reader, out IReadOnlyList<T> value)
    {
        var read = new List<T>(rows.Count);
        var isWhole = true;
        var names = new RowNames(name ?? row.KeyNames[0], areKeys: name is not null);
        foreach (var one in rows)
        {
            isWhole &= ReadRow(one, names, reader, read);
        }

        value = read;
        return isWhole;
    }

    private bool ReadRow(Node node, RowNames names, Reader reader, List<T> read)
    {
        if (node is ScalarNode { IsBlank: true })
        {
            return reader.Fault(ShapeFindings.BlankItem(node.At));
        }

        if (!names.Take(ref node, reader, out var title))
        {
            return false;
        }

        reader.Enter(title.Text, title.At);
        var isRead = row.TryRead(node, reader, out var value);
        reader.Leave();
        if (isRead)
        {
            read.Add(value!);
        }

        return isRead;
    }

    private JsonObject SampleRow(string title, Choices choices)
    {
        var sample = (JsonObject)row.Sample(choices);
        if (name is not null)
        {
            sample.Insert(0, name, title);
        }

        return sample;
    }
}
