namespace Advance.Sheets.Markup.Scanning;

/// <summary>A tag that opens an element.</summary>
internal sealed class OpenTag(int at, string name, IReadOnlyList<Attribute> attributes, bool isClosed) : Node(at)
{
    /// <summary>As written.</summary>
    public string Name { get; } = name;

    /// <summary>As written, each name once.</summary>
    public IReadOnlyList<Attribute> Attributes { get; } = attributes;

    /// <summary>True for one that ends in <c>/&gt;</c>.</summary>
    public bool IsClosed { get; } = isClosed;
}
