namespace Advance.Sheets.Markup.Scanning;

/// <summary>A tag that closes an element.</summary>
internal sealed class CloseTag(int at, string name) : Node(at)
{
    /// <summary>As written.</summary>
    public string Name { get; } = name;
}
