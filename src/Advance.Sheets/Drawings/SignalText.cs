namespace Advance.Sheets.Drawings;

/// <summary>How much room text takes in the signal diagram, in mm on the paper: rather too much than too little, since it is set later.</summary>
internal static class SignalText
{
    /// <summary>From one small line to the next.</summary>
    public const double Leading = 3.7;

    /// <summary>Height of a title with the room around it.</summary>
    public const double Title = 6.5;

    // Heights of a letter M in mm: small text and titles of a desk sheet.
    private const double Small = 8 * 25.4 / 72;
    private const double Strong = 9.5 * 25.4 / 72;
    private const double Bolder = 1.06;

    /// <summary>Width of a small line.</summary>
    public static double Width(string text) => text.Sum(Share) * Small;

    /// <summary>Width of a title.</summary>
    public static double TitleWidth(string text) => text.Sum(Share) * Strong * Bolder;

    // Widths of letters as shares of the size, each class by its widest.
    private static double Share(char letter) => letter switch
    {
        'i' or 'l' or 'j' or 'I' or ' ' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' => 0.3,
        'f' or 't' or 'r' or '(' or ')' or '/' => 0.4,
        'm' or 'w' or 'M' or 'W' or '–' or '×' => 0.92,
        >= '0' and <= '9' => 0.65,
        >= 'A' and <= 'Z' => 0.76,
        >= 'a' and <= 'z' => 0.62,
        '-' => 0.65,
        _ => 0.9,
    };
}
