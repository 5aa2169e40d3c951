using Advance.Domain;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary>Whether a row of <c>accept</c> takes a finding upon somebody.</summary>
internal static class Acceptances
{
    private static readonly Dictionary<string, string> CompetentIn = new(StringComparer.Ordinal)
    {
        ["power"] = "electrician",
        ["cable"] = "electrician",
        ["rigging"] = "rigger",
        ["stack"] = "rigger",
    };

    /// <summary>Whether it holds: it names the finding, at the figures that stand, and somebody who may say so.</summary>
    public static bool Holds(Acceptance row, Finding finding, Brief brief) =>
        Names(row, finding) && IsAt(row, finding, brief.Company.Units) && IsCompetent(row, finding, brief.Gig);

    /// <summary>Whether it means that finding, at whatever figures: by rule and address, or the last parts of the address.</summary>
    public static bool Names(Acceptance row, Finding finding) =>
        row.Rule == finding.Rule
        && (row.Where == finding.Where.Text || finding.Where.Text.EndsWith("/" + row.Where, StringComparison.Ordinal));

    // As the paper says them, or in metric units, which they were accepted in before the paper changed.
    private static bool IsAt(Acceptance row, Finding finding, UnitSystem units) =>
        finding.Figures is { } figures && (row.Figures == Speech.Of(units).Say(figures) || row.Figures == figures.ToString());

    /// <summary>
    /// Whether that person may accept it. A stop that life or a fuse hangs on needs somebody of the gig's people with the skill of its
    /// trade; all else anybody with a name.
    /// </summary>
    public static bool IsCompetent(Acceptance row, Finding finding, Gig gig) =>
        SkillNeeded(finding) is not { } skill || gig.People.Any(person => person.Name == row.By && person.Skills.Contains(skill, StringComparer.OrdinalIgnoreCase));

    /// <summary>The skill that whoever accepts it must have; null where a name is enough.</summary>
    public static string? SkillNeeded(Finding finding)
    {
        var hangsOnIt = finding.Severity == Severity.Stop && RuleBook.Rules.Any(rule => rule.Name == finding.Rule && rule.LifeOrFuse);
        return hangsOnIt ? CompetentIn.GetValueOrDefault(finding.Rule[..finding.Rule.IndexOf('/', StringComparison.Ordinal)]) : null;
    }
}
