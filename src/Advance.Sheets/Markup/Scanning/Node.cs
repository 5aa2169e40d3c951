namespace Advance.Sheets.Markup.Scanning;

/// <summary>Something that stands in markup.</summary>
/// <param name="at">Its first character, as an offset in the markup.</param>
internal abstract class Node(int at)
{
    /// <summary>Its first character, as an offset in the markup.</summary>
    public int At { get; } = at;
}
