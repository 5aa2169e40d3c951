using Advance.Domain.Facts;

namespace Advance.Reading.Yaml;

/// <summary>A text of several lines after <c>|</c> or <c>&gt;</c>.</summary>
/// <param name="text">The lines without their common indentation and without empty lines at the end.</param>
/// <param name="at">The <c>|</c> or <c>&gt;</c>.</param>
/// <param name="isFolded">Whether it was <c>&gt;</c>, which makes one line of them.</param>
/// <param name="firstLine">The first line of the block in the file, counted from 1.</param>
/// <param name="lastLine">The last; before the first where the block is empty.</param>
internal sealed class BlockNode(string text, Mark at, bool isFolded, int firstLine, int lastLine) : ScalarNode(text, at, Unmapped)
{
    public bool IsFolded { get; } = isFolded;

    public int FirstLine { get; } = firstLine;

    public int LastLine { get; } = lastLine;

    public override string Kind => "a block of lines";
}
