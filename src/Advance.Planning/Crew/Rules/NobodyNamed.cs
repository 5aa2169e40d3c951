using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>crew/nobody-named</c></summary>
internal sealed class NobodyNamed : Rule<NobodyNamed.Case>
{
    public override string Name => "crew/nobody-named";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A hold has nobody by name who signs it: no one, a role that nobody of the crew has, or somebody still to be confirmed.";

    public override string Why => "A hold that nobody signs is a hold that everybody walks through.";

    public override string Cures => "Name the person in the schedule's who, or give a person that skill.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Brief.Gig.Schedule.Where(row => row.IsHold).Select(row => new Case(row, IsNamed(row, plan.Brief.Gig) ? Verdict.Holds : Verdict.Fails));

    protected override Said Say(Case found) => new(
        $"HOLD {found.Row.What}: {Who(found.Row)}, so nobody by name signs it.",
        Cures,
        $"{Who(found.Row)}");

    private static bool IsNamed(ScheduleRow row, Gig gig)
    {
        if (row.Who is not { IsKnown: true, Doubt: null } who || who.Value.Length == 0)
        {
            return false;
        }

        // A name has a capital letter; a role is somebody's only if somebody of the crew has it.
        return char.IsUpper(who.Value[0]) || gig.People.Any(person =>
            person.Skills.Contains(who.Value, StringComparer.OrdinalIgnoreCase) || person.Does.Contains(who.Value, StringComparison.OrdinalIgnoreCase));
    }

    private static string Who(ScheduleRow row) => row.Who switch
    {
        { IsKnown: true, Doubt: not null } open => $"{open.Value} to be confirmed",
        { IsKnown: true } known when known.Value.Length > 0 => $"{known.Value} is nobody of the crew",
        _ => "no one written",
    };

    internal sealed record Case(ScheduleRow Row, Verdict Verdict)
        : Judgement(Address.Of("crew") / "hold" / Row.What, Row.At, Verdict, Doubts.Of(Row.Who?.Doubt));
}
