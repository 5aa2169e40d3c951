namespace Advance.Paper.Tree;

/// <summary>One sheet: a run of pages with the same head and foot.</summary>
/// <param name="Id">Unique in the document; links lead to it, and the workbook's tab names come from the title.</param>
/// <param name="Title">The name in bookmarks, tabs and the HTML index.</param>
/// <param name="Setup">Paper and size of type.</param>
/// <param name="Head">Printed at the top of each page of the sheet.</param>
/// <param name="Foot">Printed at the bottom of each page of the sheet.</param>
/// <param name="Blocks">From top to bottom. An empty list prints one page with head and foot.</param>
public sealed record Sheet(
    string Id,
    string Title,
    SheetSetup Setup,
    SheetHead Head,
    SheetFoot Foot,
    IReadOnlyList<Block> Blocks)
{
    /// <summary>Whose copies hold it, for the page that can show one reader's sheets alone. <c>all</c> is everybody. Default nobody in particular.</summary>
    public IReadOnlyList<string> Readers { get; init; } = [];
}
