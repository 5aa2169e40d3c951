namespace Advance.Paper;

/// <summary>What is printed and with what.</summary>
public sealed record PrintOptions
{
    /// <summary>True to make the PDF. Default true.</summary>
    public bool Pdf { get; init; } = true;

    /// <summary>True to make the HTML page. Default true.</summary>
    public bool Html { get; init; } = true;

    /// <summary>True to make the workbook. Default true.</summary>
    public bool Workbook { get; init; } = true;

    /// <summary>Fonts that are asked, in this order, when the built-in one lacks a letter. Default none.</summary>
    public IReadOnlyList<FontFile> Fonts { get; init; } = [];

    /// <summary>The words that the printer adds. Default English.</summary>
    public Wording Words { get; init; } = new();

    /// <summary>
    /// Called once when nothing is left to lay out. Packing the PDF leaves processors idle now and then: whoever has other work begins it here. Default none.
    /// </summary>
    public Action? WhenLaidOut { get; init; }

    /// <summary>Rules that follow the built-in style sheet of the HTML page. Default none.</summary>
    public string StyleSheet { get; init; } = "";

    /// <summary>Script at the end of the HTML page. Default none: the page works without.</summary>
    public string Script { get; init; } = "";
}
