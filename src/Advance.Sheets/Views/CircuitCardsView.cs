namespace Advance.Sheets.Views;

/// <summary>A strip of paper for each outlet in use, to be cut and stuck beside it.</summary>
/// <param name="Cards">By distribution and number.</param>
/// <param name="RestsOn">The open questions that may move loads to other outlets.</param>
public sealed record CircuitCardsView(IReadOnlyList<CircuitCardsView.Card> Cards, Cell RestsOn)
{
    /// <summary>One outlet.</summary>
    public sealed record Card(Cell Circuit, Cell Feeds, Cell Lead, Cell InUse, Cell On);
}
