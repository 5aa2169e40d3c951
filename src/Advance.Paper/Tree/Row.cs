namespace Advance.Paper.Tree;

/// <summary>A row of a table.</summary>
/// <param name="Cells">From left to right; missing ones at the right are empty, more than there are columns are a fault.</param>
public sealed record Row(IReadOnlyList<Cell> Cells)
{
    /// <summary>Default an ordinary row.</summary>
    public RowKind Kind { get; init; }

    /// <summary>A name that links lead to; null when nothing leads here.</summary>
    public string? Id { get; init; }

    /// <summary>True when a bracket joins it to the next row and no page may part them.</summary>
    public bool JoinsNext { get; init; }
}
