namespace Advance.Paper;

/// <summary>What can be wrong with a document when it is printed. None of these stops the printing.</summary>
public enum FaultKind
{
    /// <summary>No font has a letter; a box is printed in its place.</summary>
    MissingGlyph,

    /// <summary>A font file cannot be read; it is left out.</summary>
    UnreadableFont,

    /// <summary>A table fits in none of the ways there are: words in it are broken anywhere.</summary>
    TableTooWide,

    /// <summary>A row, caution or picture is taller than a page: it is cut between lines, or made smaller.</summary>
    TallerThanPage,

    /// <summary>A row has more cells than its table has columns; the last ones are left out.</summary>
    TooManyCells,

    /// <summary>Two things have the same id; links lead to the first.</summary>
    DoubleId,

    /// <summary>A link leads nowhere, or to an address of a kind that is not allowed; it is printed as text.</summary>
    BadLink,

    /// <summary>A picture is nothing, or has no size that can be drawn; it is left out.</summary>
    EmptyPicture,

    /// <summary>The labels of a picture found no room; they are listed under it by number.</summary>
    LabelsInKey,

    /// <summary>A number is not finite, or a date is none that a workbook knows; it is written as text.</summary>
    BadValue,

    /// <summary>Blocks, or lists in them, are nested deeper than the printer follows; what lies deeper is left out.</summary>
    TooDeep,

    /// <summary>The sheet has no paper left between its head and its foot; the head is cut.</summary>
    HeadTooTall,
}
