namespace Advance.Paper.Tree;

/// <summary>A heading; it never stands alone at the foot of a page.</summary>
/// <param name="Level">1 to 3; 1 is the largest, and becomes a bookmark. Others are taken as the nearest.</param>
/// <param name="Text">What it says.</param>
public sealed record Heading(int Level, IReadOnlyList<Inline> Text) : Block;
