using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A value that keeps its place.</summary>
internal sealed class MarkedShape<T>(Shape<T> inner) : Shape<Marked<T>>
    where T : notnull
{
    /// <inheritdoc/>
    public override string Words => inner.Words;

    /// <inheritdoc/>
    public override string Example => inner.Example;

    /// <inheritdoc/>
    public override string Takes => inner.Takes;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [inner];

    /// <inheritdoc/>
    public override bool Fits(Node node) => inner.Fits(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) => inner.Schema(book, tbc);

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => inner.Sample(choices);

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out Marked<T> value)
    {
        var isRead = inner.TryRead(node, reader, out var read);
        value = isRead ? new(read!, node.At) : default;
        return isRead;
    }
}
