namespace Advance.Paper.Tree;

/// <summary>The head of each page of a sheet. The page's number is added when it is printed.</summary>
/// <param name="Title">The sheet's name, large, at the left.</param>
public sealed record SheetHead(string Title)
{
    /// <summary>For whom the sheet is, quiet, under the title. Default nothing.</summary>
    public IReadOnlyList<Inline> For { get; init; } = [];

    /// <summary>Lines at the right of the middle; the first is printed strong. Default none.</summary>
    public IReadOnlyList<IReadOnlyList<Inline>> Lines { get; init; } = [];

    /// <summary>The revision, in a box: a letter or two; <c>DRAFT</c> and other words are set smaller. Empty leaves the box out.</summary>
    public string Revision { get; init; } = "";

    /// <summary>The day of issue as it shall be read; empty when not issued.</summary>
    public string Issued { get; init; } = "";
}
