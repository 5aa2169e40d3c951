namespace Advance.Paper.Tree;

/// <summary>A bar that shows how much of a limit is used, on a line of its own under the figure.</summary>
/// <param name="Share">Used part of the limit, 0 or more; over 1 it is drawn full with an arrow.</param>
/// <param name="Policy">Where the mark of one's own policy stands, 0 to 1; null for none.</param>
public sealed record Bar(double Share, double? Policy = null) : Inline;
