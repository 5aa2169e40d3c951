using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>Says where tabs indent lines.</summary>
internal static class Tabs
{
    /// <summary>One finding for this line and all below it that a tab indents.</summary>
    /// <param name="source">The file.</param>
    /// <param name="at">The first such tab.</param>
    public static Finding Report(TextSource source, int at)
    {
        var mark = source.MarkAt(at, 1);
        var more = 0;
        for (var line = mark.Line + 1; line <= source.LineCount; line++)
        {
            var content = source.Line(line).TrimStart(' ');
            more += content.StartsWith('\t') && !content.IsWhiteSpace() ? 1 : 0;
        }

        return TrapFindings.Tab(mark, more);
    }
}
