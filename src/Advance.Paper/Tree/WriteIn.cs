namespace Advance.Paper.Tree;

/// <summary>A line to write on.</summary>
/// <param name="LeastMm">No shorter than this, in mm. It grows with the room that is left on its line.</param>
public sealed record WriteIn(double LeastMm = 12) : Inline;
