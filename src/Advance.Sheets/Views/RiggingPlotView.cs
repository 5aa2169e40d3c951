namespace Advance.Sheets.Views;

/// <summary>The rigging plot.</summary>
/// <param name="NotDrawn">Trusses, hangs and stages of which nobody knows where they are or how large; empty for none.</param>
/// <param name="HasBridles">Whether legs of bridles are drawn.</param>
/// <param name="RestsOn">The open questions that may move what hangs; blank where there is none.</param>
public sealed record RiggingPlotView(string NotDrawn, bool HasBridles, Cell RestsOn)
{
    /// <summary>Whether loudspeakers are flown.</summary>
    public bool HasHangs { get; init; }

    /// <summary>Whether the venue has points that nothing hangs on.</summary>
    public bool HasUnused { get; init; }
}
