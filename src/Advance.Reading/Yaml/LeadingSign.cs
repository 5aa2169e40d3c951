using System.Buffers;
using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>Looks at a value that starts with a sign that YAML keeps for itself.</summary>
internal sealed class LeadingSign(TextSource source)
{
    private static readonly SearchValues<char> EndsName = SearchValues.Create(" \t\n,[]{}");

    private readonly string text = source.Text;
    private HashSet<string>? repeated;
    private Dictionary<string, int>? marked;

    /// <summary>Says what is wrong with the sign, if anything is.</summary>
    /// <param name="at">The value's first sign.</param>
    /// <param name="end">The value's end.</param>
    /// <param name="past">One past an anchor's or alias's name; one past any other sign.</param>
    public Finding? Find(int at, int end, out int past)
    {
        past = text[at] is '&' or '*' ? EndOfName(at + 1, end) : at + 1;
        return text[at] switch
        {
            '&' => Anchor(at, past),
            '*' => Alias(at, past, end),
            '!' => TrapFindings.Tag(source.MarkAt(at, 1)),
            '@' => TrapFindings.LeadingSign(source.MarkAt(at, 1), "@"),
            '%' => TrapFindings.LeadingSign(source.MarkAt(at, 1), "%"),
            '`' => TrapFindings.LeadingSign(source.MarkAt(at, 1), "a backtick"),
            _ => null,
        };
    }

    private Finding? Anchor(int at, int past)
    {
        repeated ??= [.. NamesAfter('*').Select(found => found.Name)];
        var name = text[(at + 1)..past];
        return name.Length == 0 ? TrapFindings.EmptyAnchor(source.MarkAt(at, 1))
            : repeated.Contains(name) ? null
            : TrapFindings.UnusedAnchor(source.MarkAt(at, past - at), name);
    }

    private Finding? Alias(int at, int past, int end)
    {
        marked ??= NamesAfter('&').DistinctBy(found => found.Name).ToDictionary(found => found.Name, found => found.At, StringComparer.Ordinal);
        var name = text[(at + 1)..past];
        var rest = RawText.SkipBlanks(text, past, end);
        return name.Length == 0 ? TrapFindings.LeadingSign(source.MarkAt(at, 1), "*")
            : !marked.TryGetValue(name, out var anchor) || anchor > at ? TrapFindings.NoSuchAnchor(source.MarkAt(at, past - at), name)
            : rest < end ? TrapFindings.AfterAlias(source.MarkAt(rest, end - rest), name)
            : null;
    }

    // Also those in comments and blocks: where that is wrong, the parser speaks.
    private IEnumerable<(string Name, int At)> NamesAfter(char sign)
    {
        for (var at = text.IndexOf(sign); at >= 0; at = text.IndexOf(sign, at + 1))
        {
            var past = EndOfName(at + 1, text.Length);
            if (past > at + 1)
            {
                yield return (text[(at + 1)..past], at);
            }
        }
    }

    private int EndOfName(int from, int end) => text.AsSpan(from, end - from).IndexOfAny(EndsName) is var length and >= 0 ? from + length : end;
}
