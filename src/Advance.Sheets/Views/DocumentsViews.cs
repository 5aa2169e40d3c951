using Advance.Domain.Facts;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the documents list.</summary>
internal static class DocumentsViews
{
    /// <summary>The list of a gig; null where nobody comes and nothing is brought.</summary>
    public static DocumentsView? Of(Plan plan) => plan.Pieces.Count + plan.Brief.Gig.People.Count == 0 ? null : new(
        [.. PapersDepartment.Settle(plan).Select(LineOf)],
        Cells.Head(plan.Brief.Gig.Days.Aggregate(Doubts.None, (sum, day) => sum.With(Doubts.Of(day.Date.Doubt)))));

    private static DocumentsView.Line LineOf(Planning.Paper paper) => new(
        (paper.DueBy is { } due ? Cell.Date(due) : Cell.Of("date TBC")) with { Strong = true },
        Cell.Of(paper.What),
        Cell.Of(paper.From),
        Cell.Of(paper.To),
        Cell.Of(paper.Because),
        Cell.Number(paper.Days));
}
