using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Chooses the findings that belong on a sheet.</summary>
internal static class FindingViews
{
    /// <summary>Those that a sheet asks for, heaviest first, accepted ones among them.</summary>
    public static IReadOnlyList<FindingView> Of(Plan plan, Func<Finding, bool> isWanted)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        return [.. plan.Findings.Where(isWanted).Select(finding => One(finding, speech))];
    }

    private static FindingView One(Finding finding, Speech speech) => finding.Accepted is { } accepted
        ? new FindingView("note", $"Accepted by {accepted.By}: {speech.Say(finding.Says)} {accepted.Why}", "", finding.Rule, Cells.Head(finding.RestsOn))
        : new FindingView(finding.Severity.Word(), speech.Say(finding.Says), speech.Say(finding.Cure), finding.Rule, Cells.Head(finding.RestsOn));
}
