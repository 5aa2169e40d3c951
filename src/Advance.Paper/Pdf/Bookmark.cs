using Advance.Paper.Layout;

namespace Advance.Paper.Pdf;

/// <summary>A line of the outline that readers show beside the pages.</summary>
/// <param name="Title">What it says.</param>
/// <param name="Id">Where it leads.</param>
/// <param name="Children">Lines under it.</param>
internal sealed record Bookmark(string Title, string Id, List<Bookmark> Children)
{
    /// <summary>A bookmark for each sheet, and under it one for each first-level heading that has an id.</summary>
    public static List<Bookmark> Of(DocumentLayout laid)
    {
        var bookmarks = new List<Bookmark>();
        foreach (var page in laid.Pages)
        {
            if (page.IsFirst)
            {
                bookmarks.Add(new Bookmark(page.Sheet.Title, page.Sheet.Id, []));
            }

            foreach (var placed in page.Strips)
            {
                foreach (var mark in placed.Strip.Marks)
                {
                    if (mark is AnchorMark { Bookmark: { } title } anchor)
                    {
                        bookmarks[^1].Children.Add(new Bookmark(title, anchor.Id, []));
                    }
                }
            }
        }

        return bookmarks;
    }
}
