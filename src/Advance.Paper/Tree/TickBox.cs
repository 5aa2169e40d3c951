namespace Advance.Paper.Tree;

/// <summary>A box to tick, drawn as a shape.</summary>
/// <param name="Label">What is ticked, set after it and never parted from it; may be empty.</param>
public sealed record TickBox(string Label = "") : Inline;
