using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>
/// The text as the parser gets it: what it would stumble over is replaced, unit for unit, by something harmless, so that one fault does not
/// hide those after it. What stands there is never taken for a value.
/// </summary>
internal sealed class Mending(TextSource source, ICollection<Finding> findings)
{
    private readonly List<Span> spoilt = [];
    private char[]? mended;

    /// <summary>The mended text, as long as the source's.</summary>
    public string Text => mended is null ? source.Text : new string(mended);

    /// <summary>What was replaced, in the order of the text.</summary>
    public IReadOnlyList<Span> Spoilt => [.. spoilt.OrderBy(span => span.Start)];

    /// <summary>Whether the parser need not try: it would only say the same again, in worse words.</summary>
    public bool IsHopeless { get; private set; }

    public void Report(Finding finding) => findings.Add(finding);

    public void GiveUp(Finding finding)
    {
        findings.Add(finding);
        IsHopeless = true;
    }

    /// <summary>Makes one plain word of a part of the text, and remembers that it means nothing.</summary>
    public void Spoil(int start, int end)
    {
        Fill(start, end, 'x');
        spoilt.Add(new(start, end));
    }

    /// <summary>Makes spaces of a part of the text.</summary>
    public void Blank(int start, int end) => Fill(start, end, ' ');

    /// <summary>Makes a key without a value of a line, and remembers that it means nothing.</summary>
    public void SpoilAsKey(int start, int end)
    {
        Spoil(start, end);
        mended![end - 1] = ':';
    }

    // Only the first line is filled: a word on the lines after it would have to be indented right.
    private void Fill(int start, int end, char with)
    {
        mended ??= source.Text.ToCharArray();
        for (var at = start; at < end; at++)
        {
            if (mended[at] == '\n')
            {
                with = ' ';
            }
            else
            {
                mended[at] = with;
            }
        }
    }
}
