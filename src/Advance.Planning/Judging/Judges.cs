using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary>Lets every rule see the finished plan.</summary>
public static class Judges
{
    /// <summary>Looks the rules up beside whatever else is done, so that none waits for it in the end.</summary>
    public static void WakeUp() => _ = Task.Run(() => RuleBook.Rules);

    /// <summary>All findings: heaviest first, then by place in the files; each once; with who accepted it.</summary>
    public static IReadOnlyList<Finding> Judge(Plan plan)
    {
        var found = Find(plan, areAboutFindings: false);
        var aboutThem = Find(plan with { Findings = found }, areAboutFindings: true);
        return [.. found.Concat(aboutThem).OrderByDescending(finding => finding.Severity).ThenBy(finding => finding.At).ThenBy(finding => finding.Where)];
    }

    private static List<Finding> Find(Plan plan, bool areAboutFindings) =>
    [
        .. JudgeSideBySide([.. RuleBook.Rules.Where(rule => rule.IsAboutFindings == areAboutFindings)], plan)
            .SelectMany(judged => judged)
            .Select(judged => judged.Finding)
            .OfType<Finding>()
            .DistinctBy(finding => (finding.Rule, finding.Where, finding.At, finding.Says.ToString()))
            .Select(finding => finding with { Accepted = plan.Brief.Gig.Accepted.FirstOrDefault(row => Acceptances.Holds(row, finding, plan.Brief)) }),
    ];

    // A rule is a function of the plan, so that rules need not wait for each other; the answers stay in the rules' order.
    private static IReadOnlyList<Judged>[] JudgeSideBySide(IReadOnlyList<Rule> rules, Plan plan)
    {
        var judged = new IReadOnlyList<Judged>[rules.Count];
        Parallel.For(0, rules.Count, index => judged[index] = rules[index].Judge(plan));
        return judged;
    }
}
