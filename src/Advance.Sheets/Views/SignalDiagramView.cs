namespace Advance.Sheets.Views;

/// <summary>The way of the signal, whole where it fits across the paper, else parted at the desk, and after it by who hears it where that is too high.</summary>
/// <param name="Paper"><c>a4</c>, or <c>a3</c> where not even a part fits.</param>
/// <param name="Parts">Which parts are drawn, one under the other.</param>
/// <param name="RestsOn">The open questions that may move ports and leads.</param>
public sealed record SignalDiagramView(string Paper, IReadOnlyList<SignalDiagramView.Part> Parts, Cell RestsOn)
{
    /// <summary>One drawing.</summary>
    /// <param name="Id">As the drawing is asked for.</param>
    /// <param name="Title">Over it; empty for the whole.</param>
    public sealed record Part(string Id, string Title);
}
