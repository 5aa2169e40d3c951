namespace Advance.Paper.Tree;

/// <summary>Something that was found and has to be read, in the style of a caution. Never split over pages.</summary>
/// <param name="Weight">Which word it opens with.</param>
/// <param name="Text">What was found; stands alone.</param>
public sealed record Remark(RemarkWeight Weight, IReadOnlyList<Inline> Text) : Block
{
    /// <summary>Where it comes from and what cures it, quiet. Default nothing.</summary>
    public IReadOnlyList<Inline> Detail { get; init; } = [];
}
