using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary>Lets every rule see the finished plan.</summary>
public static class Judges
{
    /// <summary>All findings: heaviest first, then by place in the files; each once; with who accepted it.</summary>
    public static IReadOnlyList<Finding> Judge(Plan plan)
    {
        var found = Find(plan, areAboutFindings: false);
        var aboutThem = Find(plan with { Findings = found }, areAboutFindings: true);
        return [.. found.Concat(aboutThem).OrderByDescending(finding => finding.Severity).ThenBy(finding => finding.At).ThenBy(finding => finding.Where)];
    }

    private static List<Finding> Find(Plan plan, bool areAboutFindings) =>
    [
        .. RuleBook.Rules
            .Where(rule => rule.IsAboutFindings == areAboutFindings)
            .SelectMany(rule => rule.Judge(plan))
            .Select(judged => judged.Finding)
            .OfType<Finding>()
            .DistinctBy(finding => (finding.Rule, finding.Where, finding.At, finding.Says.ToString()))
            .Select(finding => finding with { Accepted = plan.Brief.Gig.Accepted.FirstOrDefault(row => Acceptances.Holds(row, finding, plan.Brief.Gig)) }),
    ];
}
