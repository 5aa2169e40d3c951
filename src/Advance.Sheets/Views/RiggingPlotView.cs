namespace Advance.Sheets.Views;

/// <summary>The rigging plot.</summary>
/// <param name="Stage">Name of the stage that it is drawn over; empty for none.</param>
/// <param name="NotDrawn">Trusses of which nobody knows where they hang or how long they are; empty for none.</param>
/// <param name="HasBridles">Whether legs of bridles are drawn.</param>
/// <param name="RestsOn">The open questions that may move what hangs; blank where there is none.</param>
public sealed record RiggingPlotView(string Stage, string NotDrawn, bool HasBridles, Cell RestsOn)
{
    /// <summary>Whether loudspeakers are flown.</summary>
    public bool HasHangs { get; init; }

    /// <summary>Whether the venue has points that nothing hangs on.</summary>
    public bool HasUnused { get; init; }
}
