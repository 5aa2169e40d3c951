namespace Advance.Paper.Tree;

/// <summary>A caution: a heavy bar, a signal word, and three short sentences. Never split over pages.</summary>
/// <param name="Signal">How bad it can be.</param>
/// <param name="Happens">What can happen, one sentence.</param>
/// <param name="Do">What to do, one sentence.</param>
/// <param name="Decides">Who decides, one sentence; may be empty.</param>
public sealed record Caution(
    Signal Signal,
    IReadOnlyList<Inline> Happens,
    IReadOnlyList<Inline> Do,
    IReadOnlyList<Inline> Decides) : Block;
