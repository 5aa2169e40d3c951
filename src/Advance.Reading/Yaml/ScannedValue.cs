namespace Advance.Reading.Yaml;

/// <summary>What the scan knows about the value before the present line.</summary>
/// <param name="Parent">The column of its key or dash.</param>
/// <param name="Key">Its key in the text; empty for an item of a list.</param>
/// <param name="IsOpen">Whether nothing was written yet, so that the value may stand on the lines below.</param>
/// <param name="EndsLine">Whether it was written on its line, so that a line that stands deeper cannot be a key.</param>
/// <param name="IsReported">Whether a finding has been made about the lines below it.</param>
internal readonly record struct ScannedValue(int Parent, Span Key, bool IsOpen, bool EndsLine, bool IsReported)
{
    public static readonly ScannedValue None = new(-1, default, IsOpen: false, EndsLine: false, IsReported: false);

    public static ScannedValue Open(int parent) => None with { Parent = parent, IsOpen = true };

    public static ScannedValue Written(int parent, Span key) => None with { Parent = parent, Key = key, EndsLine = true };
}
