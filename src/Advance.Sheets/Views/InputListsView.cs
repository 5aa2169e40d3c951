namespace Advance.Sheets.Views;

/// <summary>All input lists.</summary>
/// <param name="Acts">One for each act, in the order of the gig.</param>
public sealed record InputListsView(IReadOnlyList<InputListView> Acts);
