using System.Globalization;
using System.Net;
using System.Text;

namespace Advance.Sheets.Markup.Scanning;

/// <summary>Reads references to characters: the five that XML has names for, and numbers.</summary>
internal sealed class References(string text, MarkupFaults faults)
{
    private const int LongestName = 32;

    /// <summary>
    /// Reads the reference that begins at an ampersand, and gives the offset after it. What is none is a fault and stays as it is.
    /// </summary>
    public int Read(int at, StringBuilder into)
    {
        var end = text.AsSpan(at, Math.Min(LongestName, text.Length - at)).IndexOf(';');
        var name = end > 1 ? text[(at + 1)..(at + end)] : "";
        if (name.Length == 0 || !name.All(letter => char.IsAsciiLetterOrDigit(letter) || letter == '#'))
        {
            faults.Add(at, "An `&` that stands for itself is written `&amp;`.");
            into.Append('&');
            return at + 1;
        }

        if (Resolve(name) is { } letters)
        {
            into.Append(letters);
        }
        else
        {
            faults.Add(at, $"`&{name};` is not known here.", Cure(name), end + 1);
        }

        return at + end + 1;
    }

    private static string? Resolve(string name) => name switch
    {
        "amp" => "&",
        "lt" => "<",
        "gt" => ">",
        "quot" => "\"",
        "apos" => "'",
        ['#', 'x', .. var digits] => Letter(digits, NumberStyles.AllowHexSpecifier),
        ['#', .. var digits] => Letter(digits, NumberStyles.None),
        _ => null,
    };

    private static string? Letter(string digits, NumberStyles style) =>
        int.TryParse(digits, style, CultureInfo.InvariantCulture, out var number) && Rune.IsValid(number)
            ? new Rune(number).ToString()
            : null;

    private static string Cure(string name)
    {
        var html = $"&{name};";
        var letters = WebUtility.HtmlDecode(html);
        return letters != html && letters.Length == 1
            ? string.Create(CultureInfo.InvariantCulture, $"Write the letter itself, or `&#{(int)letters[0]};`.")
            : "Write the letter itself.";
    }
}
