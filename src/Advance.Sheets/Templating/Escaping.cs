using System.Text;

namespace Advance.Sheets.Templating;

/// <summary>Makes text of values, for contents and for attributes in either kind of quotes.</summary>
internal static class Escaping
{
    /// <summary>
    /// Nothing in what comes back can open or close markup. White space other than single blanks between words is written as references,
    /// because the reader takes all other white space for a template's indentation.
    /// </summary>
    public static string Escape(string value)
    {
        if (IsPlain(value))
        {
            return value;
        }

        var text = new StringBuilder(value.Length + 16);
        for (var i = 0; i < value.Length; i++)
        {
            _ = value[i] switch
            {
                '&' => text.Append("&amp;"),
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '"' => text.Append("&quot;"),
                '\'' => text.Append("&#39;"),
                '\t' => text.Append("&#9;"),
                '\n' => text.Append("&#10;"),
                '\r' => text.Append("&#13;"),
                ' ' when IsLoose(value, i) => text.Append("&#32;"),
                var letter => text.Append(letter),
            };
        }

        return text.ToString();
    }

    private static bool IsPlain(string value)
    {
        for (var i = 0; i < value.Length; i++)
        {
            if (value[i] is '&' or '<' or '>' or '"' or '\'' or '\t' or '\r' or '\n' || (value[i] == ' ' && IsLoose(value, i)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsLoose(string value, int at) =>
        at == 0 || at == value.Length - 1 || value[at - 1] == ' ';
}
