using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Tables;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A list of like values. In a cell of a table the commas part them.</summary>
/// <param name="item">One of them.</param>
/// <param name="atLeast">How many there must be.</param>
internal sealed class ListShape<T>(Shape<T> item, int atLeast = 0) : Shape<IReadOnlyList<T>>
    where T : notnull
{
    /// <inheritdoc/>
    public override string Words => "a list";

    /// <inheritdoc/>
    public override string Takes => $"list of {item.Takes}";

    /// <inheritdoc/>
    public override string Example => $"[{string.Join(", ", Enumerable.Repeat(item.Example, Math.Max(1, atLeast)))}]";

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [item];

    /// <inheritdoc/>
    public override bool Fits(Node node) => node is ListNode or CellNode;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc)
    {
        var list = new JsonObject { ["type"] = "array", ["items"] = item.Schema(book, Tbc.Instead) };
        if (atLeast > 0)
        {
            list["minItems"] = atLeast;
        }

        return book.Open(tbc, list);
    }

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices)
    {
        var count = atLeast + choices.Next(3);
        return new JsonArray([.. Enumerable.Range(0, count).Select(_ => item.Sample(choices))]);
    }

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        var nodes = node is CellNode cell ? cell.Split(',') : ((ListNode)node).Items;
        var items = new List<T>(nodes.Count);
        var isWhole = true;
        foreach (var one in nodes)
        {
            reader.Enter("", one.At);
            isWhole &= ReadItem(one, reader, items);
            reader.Leave();
        }

        value = items;
        return nodes.Count >= atLeast ? isWhole : reader.Fault(ShapeFindings.TooFew(node.At, reader.Name, atLeast));
    }

    // An open item is asked about, and is not in the list.
    private bool ReadItem(Node node, Reader reader, List<T> items)
    {
        if (node is ScalarNode { IsBlank: true })
        {
            return reader.Fault(ShapeFindings.BlankItem(node.At));
        }

        Node? rest = node;
        if (!item.TakesTbc && !Settling.TrySettle(node, reader, out rest, out _))
        {
            return false;
        }

        if (rest is null)
        {
            return true;
        }

        if (!item.TryRead(rest, reader, out var read))
        {
            return false;
        }

        items.Add(read);
        return true;
    }
}
