namespace Advance.Sheets.Views;

/// <summary>Everything the rules have to say.</summary>
/// <param name="Groups">Stops first, accepted findings last.</param>
public sealed record FindingsSheetView(IReadOnlyList<FindingsSheetView.Group> Groups)
{
    /// <summary>Findings of one weight.</summary>
    /// <param name="Name"><c>Stops: not to be issued like this</c>.</param>
    /// <param name="Findings">In the order of the plan.</param>
    public sealed record Group(string Name, IReadOnlyList<Line> Findings);

    /// <summary>One finding.</summary>
    /// <param name="Says">Its first line.</param>
    /// <param name="Cure">What would put it right; for an accepted one, who took it upon themselves, and why.</param>
    /// <param name="Rule">Its name.</param>
    /// <param name="RestsOn">The open questions behind it; blank where there are none.</param>
    public sealed record Line(Cell Says, Cell Cure, Cell Rule, Cell RestsOn);
}
