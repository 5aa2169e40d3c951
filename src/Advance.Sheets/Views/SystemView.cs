namespace Advance.Sheets.Views;

/// <summary>One stack, box by box, to be built from.</summary>
/// <param name="Id">Of the sheet.</param>
/// <param name="Name">Of the stack.</param>
/// <param name="IsDrawn">Whether the size of every box is known, so that there is an elevation.</param>
/// <param name="Facts">Place, aim, height, weight, hands and what else holds for all of it.</param>
/// <param name="Boxes">From the top down, level with the elevation.</param>
/// <param name="Findings">What rules say about it.</param>
/// <param name="Lift">Said in the caution on lifting; blank where one person lifts each box.</param>
/// <param name="Hands">How many lift the heaviest box, in words; empty where it goes on wheels or by forks.</param>
/// <param name="RestsOn">The open questions that leads, circuits and its place hang on.</param>
public sealed record SystemView(
    string Id,
    string Name,
    bool IsDrawn,
    IReadOnlyList<PairView> Facts,
    IReadOnlyList<SystemView.Box> Boxes,
    IReadOnlyList<FindingView> Findings,
    Cell Lift,
    string Hands,
    Cell RestsOn)
{
    /// <summary>Whether anything is pinned, so that pins can be forgotten.</summary>
    public bool HasPins { get; init; }

    /// <summary>One box.</summary>
    /// <param name="Position">1 for the lowest.</param>
    /// <param name="Name">On paper and in the patch.</param>
    /// <param name="Item">Its kind.</param>
    /// <param name="Way">Which way up and which way round.</param>
    /// <param name="Joined">What joins it to the one below, or what it stands on.</param>
    /// <param name="Pins">How many pins that takes; blank for none.</param>
    /// <param name="SignalIn">What feeds it, by which lead.</param>
    /// <param name="SignalOut">What it hands on to.</param>
    /// <param name="MainsIn">What feeds it with mains, by which lead.</param>
    /// <param name="MainsOut">What it hands the mains on to.</param>
    /// <param name="Address">On the network; blank where it has none.</param>
    /// <param name="Settings">What is set on it; blank for nothing.</param>
    /// <param name="Top">Its upper edge in the elevation, in mm.</param>
    /// <param name="Bottom">Its lower edge in the elevation, in mm.</param>
    public sealed record Box(
        Cell Position,
        Cell Name,
        Cell Item,
        Cell Way,
        Cell Joined,
        Cell Pins,
        Cell SignalIn,
        Cell SignalOut,
        Cell MainsIn,
        Cell MainsOut,
        Cell Address,
        Cell Settings,
        double Top,
        double Bottom);
}
