namespace Advance.Sheets.Views;

/// <summary>Certificates and papers.</summary>
/// <param name="Papers">Those due first in front.</param>
/// <param name="RestsOn">The open questions about the day of the show; blank where there are none.</param>
public sealed record DocumentsView(IReadOnlyList<DocumentsView.Line> Papers, Cell RestsOn)
{
    /// <summary>One paper.</summary>
    /// <param name="Due">The day it must be there.</param>
    /// <param name="What">Its name.</param>
    /// <param name="From">Who sends it.</param>
    /// <param name="To">Who must have it.</param>
    /// <param name="Because">What asks for it.</param>
    /// <param name="Days">Days before the show, by policy.</param>
    public sealed record Line(Cell Due, Cell What, Cell From, Cell To, Cell Because, Cell Days);
}
