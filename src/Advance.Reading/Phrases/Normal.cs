using System.Buffers;

namespace Advance.Reading.Phrases;

/// <summary>Text as a phrase reads it: what a mail program makes of quotes, dashes and signs is made plain again, unit for unit.</summary>
internal static class Normal
{
    private const string Fancy = "‘’‛′“”„″‐‑‒–—−×µμΩΩ\t\n";
    private const string Plain = "''''\"\"\"\"------xuuΩΩ  ";

    private static readonly SearchValues<char> All = SearchValues.Create(Fancy);

    /// <summary>The plain text, as long as the one given.</summary>
    public static string Of(string text) =>
        text.AsSpan().IndexOfAny(All) < 0 ? text : string.Create(text.Length, text, (plain, from) =>
        {
            for (var at = 0; at < plain.Length; at++)
            {
                var index = Fancy.IndexOf(from[at]);
                plain[at] = index < 0 ? from[at] : Plain[index];
            }
        });
}
