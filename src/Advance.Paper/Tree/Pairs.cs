namespace Advance.Paper.Tree;

/// <summary>Names and what is said of them, set as a calm grid that is read downwards, column by column.</summary>
/// <param name="Items">In reading order.</param>
public sealed record Pairs(IReadOnlyList<Pair> Items) : Block
{
    /// <summary>How many columns at most, 1 to 4; fewer are used where the width does not allow them. Default 1.</summary>
    public int Columns { get; init; } = 1;
}
