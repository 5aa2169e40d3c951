using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Advance.Reading.Files;
using Advance.Reading.Phrases;
using Advance.Reading.Schema;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>A file named by a path from the file that names it; the value is its path from the tree's folder. Whether it is there is for
/// whoever opens it to say.</summary>
internal sealed class TreePathShape : Shape<string>, IPhrased
{
    private static readonly ScalarShape<string> Said = new(Texts.Picture);

    /// <inheritdoc/>
    public Phrase? Phrase => Texts.Picture;

    /// <inheritdoc/>
    public override string Words => Said.Words;

    /// <inheritdoc/>
    public override string Example => Said.Example;

    /// <inheritdoc/>
    public override string Takes => Said.Takes;

    /// <inheritdoc/>
    public override bool Fits(Node node) => Said.Fits(node);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book, Tbc tbc) => Said.Schema(book, tbc);

    /// <inheritdoc/>
    public override JsonNode Sample(Choices choices) => Said.Sample(choices);

    /// <inheritdoc/>
    protected override bool Read(Node node, Reader reader, [MaybeNullWhen(false)] out string value)
    {
        value = null;
        if (!Said.TryRead(node, reader, out var written))
        {
            return false;
        }

        return TreePath.TryResolve(node.At.File, written, out value) || reader.Fault(FileFindings.Outside(node.At, written));
    }
}
