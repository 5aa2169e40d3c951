using System.Text;

namespace Advance.Sheets.Templating;

/// <summary>Spells the names of code as templates do.</summary>
internal static class SnakeCase
{
    /// <summary><c>MicOrDi</c> becomes <c>mic_or_di</c>, and with a hyphen as the link <c>mic-or-di</c>.</summary>
    public static string Of(string name, char link = '_')
    {
        var text = new StringBuilder(name.Length + 4);
        for (var i = 0; i < name.Length; i++)
        {
            // A capital begins a word unless it stands inside a run of capitals, as in PD or PDFs.
            if (i > 0 && char.IsAsciiLetterUpper(name[i]) && (!char.IsAsciiLetterUpper(name[i - 1]) || IsLowerAt(name, i + 1)))
            {
                text.Append(link);
            }

            text.Append(char.ToLowerInvariant(name[i]));
        }

        return text.ToString();
    }

    private static bool IsLowerAt(string name, int at) => at < name.Length && char.IsAsciiLetterLower(name[at]);
}
