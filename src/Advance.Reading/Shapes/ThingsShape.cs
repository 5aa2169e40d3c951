using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>Named things: each one's name is its key. Their order is kept.</summary>
/// <param name="thing">One of them.</param>
/// <param name="atLeast">How many there must be.</param>
internal sealed class ThingsShape<T>(Shape<T> thing, int atLeast = 0) : Shape<IReadOnlyList<T>>
    where T : notnull
{
    /// <inheritdoc/>
    public override string Words => "a map of names";

    /// <inheritdoc/>
    public override string Takes => $"by name: {thing.Takes}";

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [thing];

    /// <inheritdoc/>
    public override bool Fits(Node node) => node is MapNode;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc)
    {
        var map = new JsonObject { ["type"] = "object", ["additionalProperties"] = SchemaOfThing(book) };
        if (atLeast > 0)
        {
            map["minProperties"] = atLeast;
        }

        return book.Open(tbc, map);
    }

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) =>
        new JsonObject(choices.SomeNames(atLeast).Select(name => KeyValuePair.Create<string, JsonNode?>(name, thing.Sample(choices))));

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        var things = new List<T>();
        var isWhole = true;
        foreach (var (key, what) in ((MapNode)node).Entries)
        {
            reader.Enter(key.Text, key.At);
            isWhole &= ReadThing(key, what, reader, things);
            reader.Leave();
        }

        value = things;
        var entries = ((MapNode)node).Entries.Count;
        return entries >= atLeast || ((MapNode)node).IsPartial ? isWhole : reader.Fault(ShapeFindings.TooFew(node.At, reader.Name, atLeast));
    }

    private JsonObject SchemaOfThing(SchemaBook book)
    {
        var schema = thing.Schema(book, Tbc.AfterValue);
        return thing.MayBeBlank && !thing.TakesTbc ? new() { ["anyOf"] = new JsonArray(schema, SchemaBook.Nothing()) } : schema;
    }

    private bool ReadThing(ScalarNode key, Node what, Reader reader, List<T> things)
    {
        Node? rest = what;
        if (!thing.TakesTbc && !Settling.TrySettle(what, reader, out rest, out _))
        {
            return false;
        }

        if (rest is null)
        {
            return reader.Fault(ShapeFindings.NeededNow(what.At, key.Text, thing.Words));
        }

        if (!thing.TryRead(rest, reader, out var read))
        {
            return false;
        }

        things.Add(read);
        return true;
    }
}
