using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>access/steps</c></summary>
internal sealed class Steps : Rule<Steps.Case>
{
    public override string Name => "access/steps";

    public override Severity Severity => Severity.Note;

    public override string Catches => "There are steps on the way in, and something that is too heavy for four people to lift over them.";

    public override string Why => "Wheels end at the first step.";

    public override string Cures => "Bring a ramp, or empty it before the step and carry what is in it.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        // What is emptied outside for its size is not carried in as a whole anyway.
        var emptied = plan.Load.Passages.Where(passage => passage is { IsCase: true, Verdict: Verdict.Fails }).Select(passage => passage.Item).ToHashSet(StringComparer.Ordinal);
        var heaviest = plan.Stock.Units.Where(unit => !emptied.Contains(unit.Item) && unit.Gross.Value is not null).MaxBy(unit => unit.Gross.Value!.Value);
        return heaviest is null
            ? []
            : plan.Brief.Venue.Access.Or([]).Where(step => step.Steps > 0).Take(1)
                .Select(step => new Case(step, heaviest, heaviest.Gross.AtMost(Figure.Policy("lifts", plan.Brief.Company.Policies.Lifts.Four))));
    }

    protected override Said Say(Case found) => new(
        $"{found.Step.What}: {found.Step.Steps} up or down, and {found.Unit.Name} weighs {found.Unit.Gross.Value ?? Mass.Zero}.",
        Cures,
        $"{found.Unit.Gross.Value ?? Mass.Zero}");

    internal sealed record Case(AccessStep Step, TravellingUnit Unit, Verdict Verdict)
        : Judgement(Address.Of("access") / Step.What, Step.At, Verdict, Unit.Gross.RestsOn);
}
