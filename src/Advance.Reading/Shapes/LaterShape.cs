using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A shape that is made when it is first needed, so that a thing can hold things of its own kind.</summary>
internal sealed class LaterShape<T>(Func<Shape<T>> make) : Shape<T>
    where T : notnull
{
    private Shape<T>? made;

    /// <inheritdoc/>
    public override string Words => Made.Words;

    /// <inheritdoc/>
    public override string Example => Made.Example;

    /// <inheritdoc/>
    public override string Takes => Made.Takes;

    /// <inheritdoc/>
    public override bool TakesTbc => Made.TakesTbc;

    /// <inheritdoc/>
    public override bool MayBeBlank => Made.MayBeBlank;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [Made];

    private Shape<T> Made => made ??= make();

    /// <inheritdoc/>
    public override bool Fits(Node node) => Made.Fits(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) => Made.Schema(book, tbc);

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => Made.Sample(choices);

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out T value) => Made.TryRead(node, reader, out value);
}
