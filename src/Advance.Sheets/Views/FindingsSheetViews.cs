using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the sheet of findings.</summary>
internal static class FindingsSheetViews
{
    /// <summary>Null where the rules have nothing to say.</summary>
    public static FindingsSheetView? Of(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        var groups = plan.Findings.GroupBy(Name)
            .OrderBy(group => group.Key.Order)
            .Select(group => new FindingsSheetView.Group(group.Key.Name, [.. group.Select(finding => LineOf(finding, speech))]))
            .ToList();
        return groups.Count > 0 ? new FindingsSheetView(groups) : null;
    }

    private static (int Order, string Name) Name(Finding finding) => finding switch
    {
        { Accepted: not null } => (3, "Accepted by a named person"),
        { Stops: true } => (0, "Stops: not to be issued like this"),
        { Severity: Severity.Concern } => (1, "Concerns: somebody must look"),
        _ => (2, "Notes"),
    };

    private static FindingsSheetView.Line LineOf(Finding finding, Speech speech) => new(
        Cell.Of(speech.Say(finding.Says)) with { Verdict = finding.CannotBeJudged ? Paper.Tree.Verdict.CannotBeJudged : Paper.Tree.Verdict.Plain },
        Cell.Of(finding.Accepted is { } accepted ? $"{accepted.By}: {accepted.Why}" : speech.Say(finding.Cure)),
        Cell.Of(finding.Rule),
        Cells.Head(finding.RestsOn));
}
