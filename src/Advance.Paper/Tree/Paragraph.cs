namespace Advance.Paper.Tree;

/// <summary>Running text.</summary>
/// <param name="Text">What it says.</param>
public sealed record Paragraph(IReadOnlyList<Inline> Text) : Block
{
    /// <summary>Which edge the lines keep to. Default the left one.</summary>
    public Align Align { get; init; }
}
