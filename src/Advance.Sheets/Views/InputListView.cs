namespace Advance.Sheets.Views;

/// <summary>The input list of one act, with its mixes.</summary>
/// <param name="Id">Of its sheet.</param>
/// <param name="Act">Its name.</param>
/// <param name="People">How many on stage.</param>
/// <param name="Sets">When it plays.</param>
/// <param name="Lines">In the order of the channels; lines that are up for every act among them.</param>
/// <param name="Mixes">In the order of the mixes.</param>
/// <param name="Totals">What the lines take, in words.</param>
/// <param name="Boxes">How full each stage box is.</param>
public sealed record InputListView(
    string Id,
    string Act,
    Cell People,
    string Sets,
    IReadOnlyList<InputListView.Line> Lines,
    IReadOnlyList<InputListView.Mix> Mixes,
    IReadOnlyList<PairView> Totals,
    IReadOnlyList<InputListView.Box> Boxes)
{
    /// <summary>One channel.</summary>
    /// <param name="Channel">As on the desk.</param>
    /// <param name="Source">What is heard.</param>
    /// <param name="Device">Microphone or DI.</param>
    /// <param name="Stand">Size of stand.</param>
    /// <param name="Phantom"><c>48V</c>, or blank.</param>
    /// <param name="Place">Where on stage.</param>
    /// <param name="Port">Stage box and port; hatched where none was left.</param>
    /// <param name="From">Who brings the microphone or DI; blank for the shop.</param>
    /// <param name="Note">Anything else.</param>
    /// <param name="JoinsNext">Whether the next channel is the other half of a pair.</param>
    public sealed record Line(
        Cell Channel, Cell Source, Cell Device, Cell Stand, Cell Phantom, Cell Place, Cell Port, Cell From, Cell Note, bool JoinsNext);

    /// <summary>One mix.</summary>
    /// <param name="Number">As on the desk.</param>
    /// <param name="For">Who hears it.</param>
    /// <param name="Kind">Mono or stereo.</param>
    /// <param name="With">Wedge or in-ears.</param>
    /// <param name="Place">Where.</param>
    /// <param name="Port">Stage box and port.</param>
    /// <param name="Wants">What they want to hear.</param>
    public sealed record Mix(Cell Number, Cell For, Cell Kind, Cell With, Cell Place, Cell Port, Cell Wants);

    /// <summary>One row of a stage box's ports.</summary>
    /// <param name="Name"><c>SB1 in</c>.</param>
    /// <param name="Used">Ports in use when the fullest act plays.</param>
    /// <param name="Free">Ports left.</param>
    /// <param name="Wanted">Ports that policy wants left.</param>
    public sealed record Box(Cell Name, Cell Used, Cell Free, Cell Wanted);
}
