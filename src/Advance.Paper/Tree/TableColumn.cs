namespace Advance.Paper.Tree;

/// <summary>A column of a table: its head, and how its cells are set. Widths are found from the contents unless a hint says otherwise.</summary>
/// <param name="Key">Unique in the table, stable from issue to issue.</param>
/// <param name="Head">What stands over it.</param>
public sealed record TableColumn(string Key, IReadOnlyList<Inline> Head)
{
    /// <summary>The unit of its numbers, printed in the head; empty when it has none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Which edge its cells keep to. Default the left one.</summary>
    public Align Align { get; init; }

    /// <summary>True for the column that the table is sorted by, or that the reader came for: set in bold.</summary>
    public bool Strong { get; init; }

    /// <summary>True for a column that is repeated on each part when the table has to be split across its width.</summary>
    public bool IsKey { get; init; }

    /// <summary>No narrower than this, in mm. Default by contents.</summary>
    public double? LeastMm { get; init; }

    /// <summary>No wider than this, in mm. Default by contents.</summary>
    public double? MostMm { get; init; }

    /// <summary>Share in the width that is left over, 0 or more. Default 0: only columns that wrap grow.</summary>
    public double Grow { get; init; }

    /// <summary>Exactly as wide as this.</summary>
    /// <param name="mm">Width in mm, over 0.</param>
    public TableColumn Fixed(double mm) => this with { LeastMm = mm, MostMm = mm };
}
