namespace Advance.Paper.Tree;

/// <summary>Blocks side by side, kept on one page where they fit on one.</summary>
/// <param name="Parts">From left to right, at least one.</param>
public sealed record Columns(IReadOnlyList<ColumnsPart> Parts) : Block;
