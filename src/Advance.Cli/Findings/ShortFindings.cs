using System.Text;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Cli.Findings;

/// <summary>A line a finding: <c>gig.yaml:12:7: stop stock/too-few: …</c></summary>
internal static class ShortFindings
{
    public static string Print(IReadOnlyList<Finding> findings, Speech speech)
    {
        var text = new StringBuilder();
        foreach (var finding in findings)
        {
            text.Append($"{finding.At}: {Word(finding)} {finding.Rule}: {speech.Say(finding.Says)}\n");
        }

        return text.Append(Total.Of(findings)).Append('\n').ToString();
    }

    /// <summary>The severity, and whether somebody took it upon themselves.</summary>
    public static string Word(Finding finding) =>
        finding.Accepted is { } accepted ? $"accepted by {accepted.By}:" : finding.Severity.Word();
}
