using Advance.Domain.Facts;

namespace Advance.Reading.Files;

/// <summary>A text file. Its lines end in a single line feed here, whatever they end in on disk.</summary>
public sealed class TextSource : Source
{
    private readonly int[] starts;

    /// <summary>Takes a text whose lines end in <c>\n</c>.</summary>
    public TextSource(string file, string text)
        : base(file)
    {
        Text = text;
        starts = FindStarts(text);
    }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>How many lines, at least 1; text that ends in a line feed has an empty last line.</summary>
    public int LineCount => starts.Length;

    /// <summary>Where a line starts in the text.</summary>
    /// <param name="line">Counted from 1.</param>
    public int StartOf(int line) => starts[line - 1];

    /// <summary>A line without its end.</summary>
    /// <param name="line">Counted from 1.</param>
    public ReadOnlySpan<char> Line(int line)
    {
        var end = line < starts.Length ? starts[line] - 1 : Text.Length;
        return Text.AsSpan(starts[line - 1], end - starts[line - 1]);
    }

    /// <summary>The mark of a part of the text; what runs over a line's end is cut there.</summary>
    /// <param name="offset">From 0 to the text's length.</param>
    /// <param name="length">At least 0.</param>
    public Mark MarkAt(int offset, int length)
    {
        var found = Array.BinarySearch(starts, offset);
        var line = found >= 0 ? found + 1 : ~found;
        var column = offset - starts[line - 1];
        var rest = Line(line).Length - column;
        return new(File, line, column + 1, Math.Max(1, Math.Min(length, rest)));
    }

    /// <inheritdoc/>
    public override Quote? Quote(Mark mark)
    {
        if (mark.Line < 1 || mark.Line > LineCount)
        {
            return null;
        }

        var line = Line(mark.Line).ToString();
        var start = Math.Clamp(mark.Column - 1, 0, line.Length);
        return new(line, start, Math.Clamp(mark.Length, 1, line.Length - start + 1));
    }

    private static int[] FindStarts(string text)
    {
        var found = new List<int> { 0 };
        for (var at = text.IndexOf('\n'); at >= 0; at = text.IndexOf('\n', at + 1))
        {
            found.Add(at + 1);
        }

        return [.. found];
    }
}
