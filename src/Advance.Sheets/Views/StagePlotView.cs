namespace Advance.Sheets.Views;

/// <summary>One stage plot: of the whole stage, or as one act finds it.</summary>
/// <param name="Id">Of its sheet.</param>
/// <param name="Title">Of its sheet.</param>
/// <param name="About">Who plays and when; empty for the whole stage.</param>
/// <param name="Stage">Name of the stage, for the drawing.</param>
/// <param name="Act">Name of the act, for the drawing; empty for everything.</param>
/// <param name="Facts">Deck, height, steps, rails.</param>
/// <param name="FurtherOut">What belongs to the gig but stands too far off to be drawn.</param>
public sealed record StagePlotView(
    string Id, string Title, string About, string Stage, string Act, IReadOnlyList<PairView> Facts, IReadOnlyList<PairView> FurtherOut);
