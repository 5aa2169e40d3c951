using Advance.Domain.Facts;

namespace Advance.Sheets.Templating;

/// <summary>A template as somebody wrote it, with the places in it.</summary>
/// <param name="name">Its name in the library.</param>
/// <param name="text">The whole of it.</param>
internal sealed class SourceText(string name, string text)
{
    // Only a fault asks for lines, so they are counted when the first one does.
    private int[]? lineStarts;

    public string Name { get; } = name;

    public string Text { get; } = text;

    /// <summary>The mark of an offset; one that lies outside the text is taken as the nearest end.</summary>
    public Mark At(int offset, int length = 1)
    {
        lineStarts ??= CountLines();
        var inside = Math.Clamp(offset, 0, Text.Length);
        var found = Array.BinarySearch(lineStarts, inside);
        var line = found >= 0 ? found : ~found - 1;
        return new(Name, line + 1, inside - lineStarts[line] + 1, Math.Max(1, length));
    }

    private int[] CountLines()
    {
        var starts = new List<int> { 0 };
        for (var i = Text.IndexOf('\n', StringComparison.Ordinal); i >= 0; i = Text.IndexOf('\n', i + 1))
        {
            starts.Add(i + 1);
        }

        return [.. starts];
    }
}
