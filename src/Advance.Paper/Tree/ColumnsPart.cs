namespace Advance.Paper.Tree;

/// <summary>One of the blocks side by side.</summary>
/// <param name="Share">Its share of the width, over 0.</param>
/// <param name="Blocks">From top to bottom.</param>
public sealed record ColumnsPart(double Share, IReadOnlyList<Block> Blocks);
