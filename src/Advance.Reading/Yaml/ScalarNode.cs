using Advance.Domain.Facts;

namespace Advance.Reading.Yaml;

/// <summary>A text. What it means is known to the field alone.</summary>
/// <param name="text">The text; spaces at both ends are not part of it.</param>
/// <param name="at">The whole scalar, quotes included.</param>
/// <param name="skip">How many units of the mark come before the text's first one; <see cref="Unmapped"/> where the two do not run in step,
/// as in a text with escapes or over several lines.</param>
internal class ScalarNode(string text, Mark at, int skip = 0) : Node(at, 1)
{
    /// <summary>The text's characters cannot be found in the file one by one: every part is marked by the whole.</summary>
    public const int Unmapped = -1;

    public string Text { get; } = text;

    /// <summary>Nothing was written, or nothing between the quotes.</summary>
    public bool IsBlank => Text.Length == 0;

    public override string Kind => IsBlank ? "nothing" : "a text";

    /// <summary>The mark of a part of the text.</summary>
    public Mark Part(int offset, int length) =>
        skip == Unmapped ? At : At with { Column = At.Column + skip + offset, Length = Math.Max(1, length) };

    /// <summary>A part of the text as a scalar of its own.</summary>
    public ScalarNode Cut(int offset, int length) =>
        new(Text.Substring(offset, length), Part(offset, length), skip == Unmapped ? Unmapped : 0);
}
