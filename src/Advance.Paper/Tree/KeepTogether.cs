namespace Advance.Paper.Tree;

/// <summary>Blocks that stand on one page if they fit on one.</summary>
/// <param name="Blocks">From top to bottom.</param>
public sealed record KeepTogether(IReadOnlyList<Block> Blocks) : Block;
