using System.Text;

namespace Advance.Sheets.Views;

/// <summary>Names as ids: small letters, figures and single hyphens.</summary>
internal static class Slug
{
    /// <summary><c>The Threshers</c> becomes <c>the-threshers</c>; a name without a letter or figure becomes <c>x</c>.</summary>
    public static string Of(string name)
    {
        var slug = new StringBuilder();
        foreach (var letter in name.ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(letter))
            {
                slug.Append(letter);
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }
        }

        var text = slug.ToString().TrimEnd('-');
        return text.Length > 0 ? text : "x";
    }
}
