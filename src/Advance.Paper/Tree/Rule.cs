namespace Advance.Paper.Tree;

/// <summary>A hairline across the width.</summary>
public sealed record Rule : Block;
