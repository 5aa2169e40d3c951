namespace Advance.Sheets.Views;

/// <summary>The supply as one line each, on as many pages as its ends need.</summary>
/// <param name="Pages">What is drawn on each.</param>
/// <param name="TwoSupplies">Whether the show hangs on several services.</param>
/// <param name="Paper">The paper that it fits on across; empty for the gig's own.</param>
/// <param name="Bonds">Structures, and where the bonding conductor of each goes.</param>
/// <param name="RestsOn">The open questions that may move a line.</param>
public sealed record OneLineView(IReadOnlyList<OneLineView.Page> Pages, bool TwoSupplies, string Paper, IReadOnlyList<PairView> Bonds, Cell RestsOn)
{
    /// <summary>One page.</summary>
    /// <param name="First">The first end, from 0 on.</param>
    /// <param name="Count">How many.</param>
    /// <param name="Room">How much a page holds: <c>small</c> or <c>large</c>.</param>
    public sealed record Page(int First, int Count, string Room);
}
