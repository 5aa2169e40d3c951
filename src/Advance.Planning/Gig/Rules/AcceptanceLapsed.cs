using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>gig/acceptance-lapsed</c></summary>
internal sealed class AcceptanceLapsed : Rule<AcceptanceLapsed.Case>
{
    public override string Name => "gig/acceptance-lapsed";

    public override Severity Severity => Severity.Concern;

    public override bool IsAboutFindings => true;

    public override string Catches => "A row of accept takes nothing upon anybody: its figures have changed, its finding is gone, or whoever signed may not.";

    public override string Why => "What was accepted once is taken for settled, although what stands now was never looked at.";

    public override string Cures => "Look at the finding as it stands and accept it anew, or take the row out.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        foreach (var row in plan.Brief.Gig.Accepted)
        {
            var named = plan.Findings.FirstOrDefault(finding => Acceptances.Names(row, finding) && finding.Accepted is null)
                ?? plan.Findings.FirstOrDefault(finding => Acceptances.Names(row, finding));
            var skill = named is not null && !Acceptances.IsCompetent(row, named, plan.Brief.Gig) ? Acceptances.SkillNeeded(named) : null;
            var holds = plan.Findings.Any(finding => finding.Accepted == row);
            yield return new Case(row, named, skill, holds ? Verdict.Holds : Verdict.Fails);
        }
    }

    protected override Said Say(Case found) => found switch
    {
        { Named: null } => new(
            $"{found.Row.Rule} at {found.Row.Where} is accepted, but there is no such finding.",
            "Take the row out, or copy it from the finding that is meant.",
            $"no finding"),
        { SkillMissing: { } skill } => new(
            $"{found.Row.Rule} at {found.Row.Where} is accepted by {found.Row.By}, who is not of the gig's people with the skill {skill}.",
            $"Have it accepted by somebody in people: whose skill is {skill}.",
            $"{found.Row.By}"),
        _ => new(
            $"{found.Row.Rule} at {found.Row.Where} was accepted at {found.Row.Figures}, and stands at {found.Named.Figures ?? Words.Of($"other figures")} now.",
            "Look at it again, and accept it at the new figures or cure it.",
            $"{found.Row.Figures}"),
    };

    internal sealed record Case(Acceptance Row, Finding? Named, string? SkillMissing, Verdict Verdict)
        : Judgement(Address.Of("gig") / "accept" / Row.Rule / Row.Where, Row.At, Verdict, Doubts.None);
}
