namespace Advance.Paper.Tree;

/// <summary>What follows begins on a new page. Nothing happens at the top of a page.</summary>
public sealed record PageBreak : Block;
