namespace Advance.Paper.Setting;

/// <summary>A word with its glyphs, independent of size. Shaped once and shared.</summary>
/// <param name="Text">What it says, without spaces.</param>
/// <param name="Utf8">The same for text extraction.</param>
/// <param name="Runs">From left to right; more than one only where a fallback font steps in.</param>
/// <param name="IsRightToLeft">True for scripts such as Hebrew and Arabic.</param>
internal sealed record ShapedWord(string Text, byte[] Utf8, ShapedRun[] Runs, bool IsRightToLeft)
{
    /// <summary>Which of its letters no font has, in words; empty where all have one.</summary>
    public string[] Lacks { get; init; } = [];

    /// <summary>Width in 1/1000 pt at a size in 1/1000 pt.</summary>
    public int Width(int size)
    {
        if (Runs.Length == 1)
        {
            return Runs[0].Width(size);
        }

        var width = 0;
        foreach (var run in Runs)
        {
            width += run.Width(size);
        }

        return width;
    }
}
