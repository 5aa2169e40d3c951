using Advance.Domain.Facts;
using Advance.Reading.Yaml;

namespace Advance.Reading.Tables;

/// <summary>A cell of a table.</summary>
/// <param name="text">Without spaces at its ends.</param>
/// <param name="at">The text, or where it would stand in a blank cell.</param>
/// <param name="skip">See <see cref="ScalarNode"/>.</param>
internal sealed class CellNode(string text, Mark at, int skip = 0) : ScalarNode(text, at, skip)
{
    public override string Kind => IsBlank ? "a blank cell" : "a cell";

    /// <summary>The parts of the text between a sign, as scalars without spaces at their ends.</summary>
    public IReadOnlyList<ScalarNode> Split(char sign)
    {
        var parts = new List<ScalarNode>();
        for (var start = 0; start <= Text.Length;)
        {
            var end = Text.IndexOf(sign, start) is var found and >= 0 ? found : Text.Length;
            var lead = end - start - Text.AsSpan(start, end - start).TrimStart().Length;
            parts.Add(Cut(start + lead, Text.AsSpan(start + lead, end - start - lead).TrimEnd().Length));
            start = end + 1;
        }

        return parts;
    }

    /// <summary>The cell with a unit that its heading gave, marked as before.</summary>
    public CellNode With(string unit) => new($"{Text} {unit}", At, Unmapped);
}
