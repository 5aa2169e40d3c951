using System.Text;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Reading.Files;

namespace Advance.Cli.Findings;

/// <summary>A finding with the line it points at, a caret under the place, why it matters, what cures it, and the row that accepts it.</summary>
internal static class FullFindings
{
    private const int MostOfALine = 120;

    public static string Print(IReadOnlyList<Finding> findings, Sources sources, Speech speech)
    {
        var text = new StringBuilder();
        foreach (var finding in findings)
        {
            text.Append($"{ShortFindings.Word(finding)} {finding.Rule}: {speech.Say(finding.Says)}\n");
            text.Append($"  at {finding.At}\n");
            if (sources.Quote(finding.At) is { } quote)
            {
                AppendQuote(text, finding.At.Line, quote);
            }

            Append(text, "why", finding.Why, speech);
            Append(text, "cure", finding.Cure, speech);
            if (finding is { Figures: { } figures, Accepted: null })
            {
                text.Append($"  accept  {finding.Rule} | {finding.Where} | {speech.Say(figures)} | <who> | <why>\n");
            }

            text.Append('\n');
        }

        return text.Append(Total.Of(findings)).Append('\n').ToString();
    }

    private static void AppendQuote(StringBuilder text, int line, Quote quote)
    {
        // A long line is cut so that the caret is seen.
        var cut = Math.Max(0, quote.Start - (MostOfALine / 2));
        var shown = Visible(quote.Line[cut..Math.Min(quote.Line.Length, cut + MostOfALine)]);
        var gutter = $"{line,6} | ";
        var caret = new string('^', Math.Clamp(quote.Length, 1, MostOfALine - (quote.Start - cut)));
        text.Append($"{gutter}{shown}\n{new string(' ', gutter.Length + quote.Start - cut)}{caret}\n");
    }

    // What a terminal would act on is not shown to it.
    private static string Visible(string line) => string.Concat(line.Select(letter => char.IsControl(letter) ? ' ' : letter));

    private static void Append(StringBuilder text, string word, Words? words, Speech speech)
    {
        if (words is not null)
        {
            text.Append($"  {word,-6}  {speech.Say(words)}\n");
        }
    }
}
