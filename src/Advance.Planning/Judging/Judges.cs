using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary>Lets every rule see the finished plan.</summary>
public static class Judges
{
    /// <summary>All findings: heaviest first, then by place in the files; each once; with who accepted it.</summary>
    public static IReadOnlyList<Finding> Judge(Plan plan)
    {
        var findings = RuleBook.Rules
            .SelectMany(rule => rule.Judge(plan))
            .Select(judged => judged.Finding)
            .OfType<Finding>()
            .DistinctBy(finding => (finding.Rule, finding.Where, finding.At, finding.Says.ToString()))
            .Select(finding => WithAcceptance(finding, plan.Brief.Gig.Accepted))
            .ToList();
        return [.. findings.OrderByDescending(finding => finding.Severity).ThenBy(finding => finding.At).ThenBy(finding => finding.Where)];
    }

    // An acceptance holds for the figures it was given at, and lapses when they change.
    private static Finding WithAcceptance(Finding finding, IReadOnlyList<Acceptance> rows)
    {
        var accepted = rows.FirstOrDefault(row => row.Rule == finding.Rule
            && row.Where == finding.Where.Text
            && row.Figures == finding.Figures?.ToString());
        return accepted is null ? finding : finding with { Accepted = accepted };
    }
}
