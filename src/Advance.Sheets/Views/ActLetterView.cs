namespace Advance.Sheets.Views;

/// <summary>A letter to one act: what it told us, what each side brings, when it is wanted where, and what is still to be answered.</summary>
/// <param name="Id">Of the sheet.</param>
/// <param name="Act">Its name.</param>
/// <param name="Facts">People, sets, lines, mixes.</param>
/// <param name="Times">Of the day, as far as they are this act's.</param>
/// <param name="YouBring">In its own words, then line by line.</param>
/// <param name="WeBring">Microphones, DIs, stands and wedges, by kind.</param>
/// <param name="Mixes">What it hears.</param>
/// <param name="Questions">What it must still answer.</param>
/// <param name="RestsOn">The open questions that move who brings what; blank where there is none.</param>
/// <param name="HangsOn">The same as the act is asked.</param>
public sealed record ActLetterView(
    string Id,
    string Act,
    IReadOnlyList<PairView> Facts,
    IReadOnlyList<ActLetterView.Time> Times,
    IReadOnlyList<Cell> YouBring,
    IReadOnlyList<ActLetterView.Brought> WeBring,
    IReadOnlyList<ActLetterView.Mix> Mixes,
    IReadOnlyList<ActLetterView.Question> Questions,
    Cell RestsOn,
    Cell HangsOn)
{
    /// <summary>A line of the day.</summary>
    public sealed record Time(Cell At, Cell What, Cell Where);

    /// <summary>So many of a kind, and for what.</summary>
    public sealed record Brought(Cell Count, Cell Item, Cell For);

    /// <summary>A mix.</summary>
    public sealed record Mix(Cell Number, Cell For, Cell With, Cell Wants);

    /// <summary>A question to the act.</summary>
    public sealed record Question(Cell By, Cell What, Cell Now);
}
