namespace Advance.Paper.Tree;

/// <summary>Rows that belong together.</summary>
/// <param name="Rows">From top to bottom.</param>
public sealed record RowGroup(IReadOnlyList<Row> Rows)
{
    /// <summary>What stands over them, and again on each page that the group goes on to. Empty for no head.</summary>
    public IReadOnlyList<Inline> Head { get; init; } = [];

    /// <summary>A name that links lead to; null when nothing leads here.</summary>
    public string? Id { get; init; }
}
