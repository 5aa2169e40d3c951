using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>
/// What may be written at some place. It reads a node, gives the JSON Schema of what it reads, and makes samples that it reads: three
/// jobs in one object, so that reader, schema and tests cannot drift apart.
/// </summary>
internal abstract class Shape
{
    /// <summary>What it is, with its article, to follow on "here belongs": <c>a list</c>.</summary>
    public abstract string Words { get; }

    /// <summary>What may be written, for a finding that asks for it.</summary>
    public virtual string Example => Words;

    /// <summary>What it takes, for the key reference, in Markdown.</summary>
    public abstract string Takes { get; }

    /// <summary>Whether it makes something of TBC itself; where not, the key that holds it does.</summary>
    public virtual bool TakesTbc => false;

    /// <summary>Whether a thing of this shape may be a mere name, with nothing after its colon.</summary>
    public virtual bool MayBeBlank => false;

    /// <summary>Whether a node is of the right kind, whatever is in it.</summary>
    public abstract bool Fits(Node node);

    /// <summary>The JSON Schema of what may be written.</summary>
    /// <param name="book">Collects the definitions.</param>
    /// <param name="tbc">What of TBC may be written here.</param>
    public abstract JsonObject Schema(SchemaBook book, Tbc tbc);

    /// <summary>Something that may be written: a text, an array or an object; every scalar is a text.</summary>
    public abstract JsonNode Sample(Choices choices);

    /// <summary>Reads a node for its findings alone.</summary>
    public abstract bool Check(Node node, Reader reader);

    /// <summary>The shapes that it is made of, for those who list them all.</summary>
    public virtual IEnumerable<Shape> Parts => [];
}

/// <summary>A shape and the value that it reads.</summary>
/// <typeparam name="T">The value.</typeparam>
internal abstract class Shape<T> : Shape
    where T : notnull
{
    /// <inheritdoc/>
    public sealed override bool Check(Node node, Reader reader) => TryRead(node, reader, out _);

    /// <summary>Reads a node. Every fault becomes a finding at its mark; nothing is thrown.</summary>
    /// <returns>False where a finding has been made, so that there is no value.</returns>
    public bool TryRead(Node node, Reader reader, [MaybeNullWhen(false)] out T value)
    {
        if (node is SpoiltNode)
        {
            value = default;
            return false;
        }

        if (!Fits(node))
        {
            value = default;
            return reader.Fault(ShapeFindings.WrongKind(node, this));
        }

        return Read(node, reader, out value);
    }

    /// <summary>Reads a node of the right kind.</summary>
    protected abstract bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out T value);
}
