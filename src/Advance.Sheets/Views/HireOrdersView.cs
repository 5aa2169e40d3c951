namespace Advance.Sheets.Views;

/// <summary>What is hired, an order for each firm.</summary>
/// <param name="Orders">By name; what nobody is known to hire out comes last.</param>
public sealed record HireOrdersView(IReadOnlyList<HireOrdersView.Order> Orders)
{
    /// <summary>One firm.</summary>
    /// <param name="Id">Of the sheet.</param>
    /// <param name="Firm">Its name.</param>
    /// <param name="Company">Who orders.</param>
    /// <param name="From">The day it comes in.</param>
    /// <param name="Until">The day it goes back.</param>
    /// <param name="Lines">What is wanted.</param>
    /// <param name="RestsOn">The open questions that may change how many; blank where there are none.</param>
    public sealed record Order(string Id, string Firm, string Company, Cell From, Cell Until, IReadOnlyList<Line> Lines, Cell RestsOn);

    /// <summary>One kind.</summary>
    /// <param name="Count">How many.</param>
    /// <param name="Item">What.</param>
    /// <param name="Why">What is short, or what it is wanted for.</param>
    public sealed record Line(Cell Count, Cell Item, Cell Why);
}
