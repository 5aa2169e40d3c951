using System.Globalization;
using Advance.Sheets.Templating;

namespace Advance.Sheets.Markup.Subset;

/// <summary>The kinds of values that attributes have.</summary>
internal static class Values
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    public static ValueRule Text { get; } = new("text", _ => true);

    public static ValueRule SomeText { get; } = new("text, not empty", text => text.Trim().Length > 0);

    public static ValueRule Words { get; } = new("words with blanks between them", text => text.Trim(' ').Length > 0);

    public static ValueRule Id { get; } = new("a name without blanks", text => text.Length > 0 && !text.Any(char.IsWhiteSpace));

    // It becomes the name of a file.
    public static ValueRule Name { get; } = new(
        "small letters and hyphens, 40 at most", text => text.Length is > 0 and <= 40 && char.IsAsciiLetterLower(text[0]) && text.All(letter => char.IsAsciiLetterLower(letter) || letter == '-'));

    public static ValueRule PageLink { get; } = new("`#` and an id", text => text.Length > 1 && text[0] == '#');

    public static ValueRule Over0 { get; } = new("a number over 0", text => Number(text) > 0);

    public static ValueRule From0 { get; } = new("a number, 0 or more", text => Number(text) >= 0);

    public static ValueRule Share { get; } = new("a number over 0 and under 1", text => Number(text) is > 0 and < 1);

    public static ValueRule Mark { get; } = new("a number from 0 to 1", text => Number(text) is >= 0 and <= 1);

    public static ValueRule AnyNumber { get; } = new("a number", text => Number(text) is not null);

    public static ValueRule Time { get; } = new("`2026-09-12`, `19:30` or `2026-09-12T19:30`", text => MachineValues.Time(text) is not null);

    public static ValueRule Machine { get; } = new("a number, a date or a time", text => MachineValues.Of(text) is not null);

    public static ValueRule Whole(int least, int most) => new(
        string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}"),
        text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most);

    public static ValueRule OneOf(params string[] words)
    {
        var listed = string.Join(", ", words.Select(word => $"`{word}`"));
        return new(words.Length > 1 ? "one of " + listed : listed, text => words.Contains(text, StringComparer.Ordinal)) { Words = words };
    }

    /// <summary>
    /// The words of an enumeration in its order, as <c>tape-up</c>. Not generic, nor is anything else that is asked for each element: code for
    /// a generic over a type of another assembly is made while the program runs, and that is most of what a short run would wait for.
    /// </summary>
    public static ValueRule OneOf(Type enumeration) => OneOf([.. Enum.GetNames(enumeration).Select(name => SnakeCase.Of(name, '-'))]);

    /// <summary>A finite number with a point as its decimal sign, or null.</summary>
    public static double? Number(string text) =>
        double.TryParse(text, Plain, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
}
