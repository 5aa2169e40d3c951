using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Domain.Facts;
using Advance.Reading.Phrases;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A value that may be open: with <c>TBC</c> after it or instead of it.</summary>
internal sealed class GivenShape<T>(Shape<T> inner) : Shape<Given<T>>, IPhrased
    where T : notnull
{
    /// <inheritdoc/>
    public Phrase? Phrase => (inner as IPhrased)?.Phrase;

    /// <inheritdoc/>
    public override string Words => inner.Words;

    /// <inheritdoc/>
    public override string Example => inner.Example;

    /// <inheritdoc/>
    public override string Takes => inner.Takes;

    /// <inheritdoc/>
    public override bool TakesTbc => true;

    /// <inheritdoc/>
    public override bool MayBeBlank => true;

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [inner];

    /// <inheritdoc/>
    public override bool Fits(Node node) => inner.Fits(node) || node is ScalarNode { IsBlank: true } || Settling.IsTbcAlone(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) => inner.Schema(book, tbc == Tbc.Instead ? tbc : Tbc.OrNothing);

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => inner.Sample(choices);

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out Given<T> value)
    {
        value = default;
        if (node is ScalarNode { IsBlank: true } and not BlockNode)
        {
            value = Given.Unknown<T>(node.At, reader.Miss(node.At));
            return true;
        }

        if (!Settling.TrySettle(node, reader, out var rest, out var doubt))
        {
            return false;
        }

        if (rest is null)
        {
            value = Given.Unknown<T>(node.At, doubt!);
            return true;
        }

        if (!inner.TryRead(rest, reader, out var known))
        {
            return false;
        }

        value = Given.Of(known, node.At, doubt);
        return true;
    }
}
