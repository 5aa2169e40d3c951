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

    /// <summary>Those that a sheet asks for, without notes: the sheet of findings has them.</summary>
    public static IReadOnlyList<FindingView> Heavy(Plan plan, Func<Finding, bool> isWanted) =>
        Of(plan, finding => finding.Severity >= Severity.Concern && isWanted(finding));

    /// <summary>Whether the rule belongs to one of these families: <c>sound</c> is that of <c>sound/no-signal</c>.</summary>
    public static bool IsOf(Finding finding, params string[] families) =>
        families.Any(family => finding.Rule.StartsWith(family + "/", StringComparison.Ordinal));

    /// <summary>Whether it is about a thing or a part of it.</summary>
    public static bool IsAt(Finding finding, string address) =>
        finding.Where.Text is { } where && (where == address || where.StartsWith(address + "/", StringComparison.Ordinal));

    private static FindingView One(Finding finding, Speech speech) => finding.Accepted is { } accepted
        ? new FindingView("note", $"Accepted by {accepted.By}: {speech.Say(finding.Says)} {DaySheetViews.Capital(accepted.Why.TrimEnd('.'))}.", "", finding.Rule, Cells.Short(finding.RestsOn))
        : new FindingView(finding.Severity.Word(), speech.Say(finding.Says), speech.Say(finding.Cure), finding.Rule, Cells.Short(finding.RestsOn));
}
