using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>Looks at a comment that shares its line with a value.</summary>
internal static class CommentScan
{
    private static readonly string[] ToBeConfirmed = ["TBC", "TBD", "TBA"];

    /// <summary>Says where a comment was perhaps meant as part of the value, or holds what belongs in the value.</summary>
    /// <param name="source">The file.</param>
    /// <param name="valueStart">Where the value starts.</param>
    /// <param name="hash">The comment's #.</param>
    /// <param name="end">The line's end.</param>
    public static IEnumerable<Finding> Look(TextSource source, int valueStart, int hash, int end)
    {
        if (hash >= end)
        {
            yield break;
        }

        var comment = source.Text[hash..end].TrimEnd();
        if (FindTbc(comment) is var tbc and >= 0)
        {
            yield return TrapFindings.TbcInComment(source.MarkAt(hash + tbc, 3), comment.Substring(tbc, 3));
        }
        else if (comment.Length > 1 && char.IsLetterOrDigit(comment[1]))
        {
            var word = comment.Split(' ')[0];
            yield return TrapFindings.GluedHash(source.MarkAt(hash, word.Length), word, source.Text[valueStart..(hash + comment.Length)].Trim());
        }
    }

    private static int FindTbc(string comment)
    {
        foreach (var word in ToBeConfirmed)
        {
            for (var at = comment.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = comment.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
            {
                if (!char.IsLetterOrDigit(comment[at - 1]) && (at + 3 >= comment.Length || !char.IsLetterOrDigit(comment[at + 3])))
                {
                    return at;
                }
            }
        }

        return -1;
    }
}
