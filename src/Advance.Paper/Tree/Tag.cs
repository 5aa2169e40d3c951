namespace Advance.Paper.Tree;

/// <summary>A few words in a small rounded outline, never parted.</summary>
/// <param name="Text">As <c>TBC</c>.</param>
public sealed record Tag(string Text) : Inline;
