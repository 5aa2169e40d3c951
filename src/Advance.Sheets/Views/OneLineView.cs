namespace Advance.Sheets.Views;

/// <summary>The supply as one line each, on as many pages as its ends need.</summary>
/// <param name="Pages">What is drawn on each.</param>
/// <param name="TwoSupplies">Whether the show hangs on several services.</param>
/// <param name="Paper">The paper that it fits on across; empty for the gig's own.</param>
/// <param name="RestsOn">The open questions that may move a line.</param>
public sealed record OneLineView(IReadOnlyList<OneLineView.Page> Pages, bool TwoSupplies, string Paper, Cell RestsOn)
{
    /// <summary>One page.</summary>
    /// <param name="First">The first end, from 0 on.</param>
    /// <param name="Count">How many.</param>
    public sealed record Page(int First, int Count);
}
