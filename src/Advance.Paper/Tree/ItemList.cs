namespace Advance.Paper.Tree;

/// <summary>A list of short items, one under the other.</summary>
/// <param name="Items">From top to bottom.</param>
/// <param name="Numbered">True for 1, 2, 3; false for dashes.</param>
public sealed record ItemList(IReadOnlyList<IReadOnlyList<Inline>> Items, bool Numbered = false) : Block;
