using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Phrases;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A text in a small notation.</summary>
internal sealed class ScalarShape<T>(Phrase<T> phrase) : Shape<T>, IPhrased
    where T : notnull
{
    /// <inheritdoc/>
    public Phrase? Phrase => phrase;

    /// <inheritdoc/>
    public override string Words => phrase.Words;

    /// <inheritdoc/>
    public override string Takes => phrase.Takes;

    /// <inheritdoc/>
    public override string Example => phrase.Examples[0];

    /// <inheritdoc/>
    public override bool Fits(Node node) => node is ScalarNode;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) => book.Phrase(phrase, tbc);

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => JsonValue.Create(choices.Pick(phrase.Examples));

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out T value)
    {
        var scalar = (ScalarNode)node;
        value = default;
        if (scalar.IsBlank)
        {
            return reader.Fault(ShapeFindings.Blank(reader.NamedAt, reader.Name, phrase.Examples[0]));
        }

        return phrase.TryRead(scalar.Text, out value, out var fault) || reader.Fault(ShapeFindings.Phrase(scalar, fault));
    }
}
