namespace Advance.Paper.Tree;

/// <summary>The foot of each page of a sheet, quiet, under a hairline.</summary>
/// <param name="Left">Who made the sheet and what it is not.</param>
/// <param name="Right">What the reader has to know of the whole.</param>
public sealed record SheetFoot(IReadOnlyList<Inline> Left, IReadOnlyList<Inline> Right)
{
    /// <summary>A foot that says nothing.</summary>
    public static SheetFoot Empty { get; } = new([], []);
}
