using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A shape whose value is turned into another.</summary>
internal sealed class TurnedShape<TFrom, T>(Shape<TFrom> inner, Func<TFrom, Reader, T> turn) : Shape<T>
    where TFrom : notnull
    where T : notnull
{
    /// <inheritdoc/>
    public override string Words => inner.Words;

    /// <inheritdoc/>
    public override string Example => inner.Example;

    /// <inheritdoc/>
    public override string Takes => inner.Takes;

    /// <inheritdoc/>
    public override bool TakesTbc => inner.TakesTbc;

    /// <inheritdoc/>
    public override bool MayBeBlank => inner.MayBeBlank;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [inner];

    /// <inheritdoc/>
    public override bool Fits(Node node) => inner.Fits(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) => inner.Schema(book, tbc);

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => inner.Sample(choices);

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out T value)
    {
        var isRead = inner.TryRead(node, reader, out var from);
        value = isRead ? turn(from!, reader) : default;
        return isRead;
    }
}
