using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Domain.Places;
using Advance.Reading.Phrases;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A place. A point in brackets is a list to YAML, and a text in a table.</summary>
internal sealed class PlaceShape : Shape<Place>, IPhrased
{
    private static readonly ScalarShape<Place> Said = new(Places.Place);

    /// <inheritdoc/>
    public Phrase? Phrase => Places.Place;

    /// <inheritdoc/>
    public override string Words => Said.Words;

    /// <inheritdoc/>
    public override string Example => Said.Example;

    /// <inheritdoc/>
    public override string Takes => Said.Takes;

    /// <inheritdoc/>
    public override bool Fits(Node node) => Said.Fits(node) || node is ListNode;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) =>
        new() { ["anyOf"] = new JsonArray(Said.Schema(book, tbc), Point(Points.Coordinate, Points.LastCoordinate), Point(Points.Coordinate, Points.Coordinate, Points.LastCoordinate)) };

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => choices.Next(4) == 0 ? new JsonArray("1.2", "-4", "6.5 m") : Said.Sample(choices);

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out Place value)
    {
        if (node is not ListNode list)
        {
            return Said.TryRead(node, reader, out value);
        }

        value = null;
        if (list.Items.FirstOrDefault(item => item is not ScalarNode) is { } odd)
        {
            return odd is not SpoiltNode && reader.Fault(ShapeFindings.WrongKind(odd, Said));
        }

        var text = $"[{string.Join(",", list.Items.Cast<ScalarNode>().Select(item => item.Text))}]";
        return Places.Place.TryRead(text, out value, out var fault) || reader.Fault(ShapeFindings.Phrase(Blame(list, fault), fault with { Offset = 0 }));
    }

    // The fault lies in one of the items, which need not stand side by side in the file.
    private static ScalarNode Blame(ListNode list, PhraseFault fault)
    {
        var end = 1;
        foreach (var item in list.Items.Cast<ScalarNode>())
        {
            end += item.Text.Length + 1;
            if (fault.Offset > 0 && fault.Offset < end)
            {
                return new(item.Text, item.At, ScalarNode.Unmapped);
            }
        }

        return new("", list.At, ScalarNode.Unmapped);
    }

    private static JsonObject Point(params string[] coordinates) => new()
    {
        ["type"] = "array",
        ["minItems"] = coordinates.Length,
        ["maxItems"] = coordinates.Length,
        ["prefixItems"] = new JsonArray([.. coordinates.Select(pattern => new JsonObject { ["type"] = new JsonArray("string", "number"), ["pattern"] = $"^(?:{pattern})$" })]),
    };
}
