using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Picks the findings that belong on a sheet.</summary>
internal static class Remarks
{
    /// <summary>Those that fit, heaviest first, the accepted ones among them; notes are left to the day sheet.</summary>
    public static IReadOnlyList<RemarkView> On(Plan plan, Func<Finding, bool> belongs)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        return [.. plan.Findings.Where(finding => finding.Severity >= Severity.Concern && belongs(finding)).Select(finding => Of(finding, speech))];
    }

    /// <summary>Whether the rule belongs to one of these families: <c>sound</c> is that of <c>sound/no-signal</c>.</summary>
    public static bool IsOf(Finding finding, params string[] families) =>
        families.Any(family => finding.Rule.StartsWith(family + "/", StringComparison.Ordinal));

    /// <summary>Whether it is about a thing or a part of it.</summary>
    public static bool IsAt(Finding finding, string address) =>
        finding.Where.Text is { } where && (where == address || where.StartsWith(address + "/", StringComparison.Ordinal));

    private static RemarkView Of(Finding finding, Speech speech) => new(
        finding.Severity.Word(),
        speech.Say(finding.Says),
        finding.Rule,
        speech.Say(finding.Cure),
        finding.Accepted is { } accepted ? $"Accepted by {accepted.By}: {accepted.Why}" : "",
        Cells.Head(finding.RestsOn));
}
