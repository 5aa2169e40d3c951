namespace Advance.Sheets.Drawings;

/// <summary>How much of the one-line a page holds, in mm: what is left under the head, less a few lines of words under the drawing.</summary>
/// <param name="Wide">Across the page, less its edges.</param>
/// <param name="High">Down the page.</param>
internal sealed record OneLineRoom(double Wide, double High)
{
    /// <summary>A4 or Letter.</summary>
    public static OneLineRoom Small { get; } = new(260, 138);

    /// <summary>A3 or Tabloid.</summary>
    public static OneLineRoom Large { get; } = new(372, 215);
}
