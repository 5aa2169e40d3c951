using System.Text;

namespace Advance.Paper.Pdf;

/// <summary>Ids and addresses in the letters that every reader of PDF takes.</summary>
internal static class PdfNames
{
    /// <summary>An id as a name object's text: letters, digits and hyphens stay, all else is spelled out in hexadecimal after an underscore.</summary>
    public static string Of(string id)
    {
        var name = new StringBuilder(id.Length + 8);
        foreach (var b in Encoding.UTF8.GetBytes(id))
        {
            if (char.IsAsciiLetterOrDigit((char)b) || b == '-')
            {
                name.Append((char)b);
            }
            else
            {
                name.Append('_').Append(b.ToString("X2", System.Globalization.CultureInfo.InvariantCulture));
            }
        }

        return name.ToString();
    }

    /// <summary>An address in ASCII: other letters are percent-encoded.</summary>
    public static string Url(string address)
    {
        var url = new StringBuilder(address.Length);
        foreach (var b in Encoding.UTF8.GetBytes(address))
        {
            if (b is > 0x20 and < 0x7F)
            {
                url.Append((char)b);
            }
            else
            {
                url.Append('%').Append(b.ToString("X2", System.Globalization.CultureInfo.InvariantCulture));
            }
        }

        return url.ToString();
    }
}
