namespace Advance.Paper.Tree;

/// <summary>A cell of a table.</summary>
/// <param name="Text">What it says; empty for an empty cell.</param>
public sealed record Cell(IReadOnlyList<Inline> Text)
{
    /// <summary>An empty cell.</summary>
    public static Cell Empty { get; } = new([]);

    /// <summary>How many columns it takes, 1 or more. Default 1.</summary>
    public int Span { get; init; } = 1;

    /// <summary>Which edge its text keeps to. Default that of its column.</summary>
    public Align? Align { get; init; }

    /// <summary>How the figure fared when it was judged. Default plain.</summary>
    public Verdict Verdict { get; init; }

    /// <summary>What the workbook holds in place of the text. Default the value of the only <see cref="Datum"/> in the text, if there is just one.</summary>
    public MachineValue? Value { get; init; }
}
