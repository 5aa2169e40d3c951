namespace Advance.Paper.Tree;

/// <summary>What follows begins on a new line.</summary>
public sealed record LineBreak : Inline;
