using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>One of several shapes, told apart by the kind of node: a text, a list, a map.</summary>
internal sealed class EitherShape<T>(params Shape<T>[] shapes) : Shape<T>
    where T : notnull
{
    /// <inheritdoc/>
    public override string Words => string.Join(" or ", shapes.Select(shape => shape.Words));

    /// <inheritdoc/>
    public override string Example => shapes[0].Example;

    /// <inheritdoc/>
    public override string Takes => string.Join("; or ", shapes.Select(shape => shape.Takes));

    /// <inheritdoc/>
    public override bool TakesTbc => shapes.Any(shape => shape.TakesTbc);

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => shapes;

    /// <inheritdoc/>
    public override bool Fits(Node node) => shapes.Any(shape => shape.Fits(node));

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) =>
        new() { ["anyOf"] = new JsonArray([.. shapes.Select(shape => shape.Schema(book, tbc))]) };

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => choices.Pick(shapes).Sample(choices);

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out T value) =>
        shapes.First(shape => shape.Fits(node)).TryRead(node, reader, out value);
}
