using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/choice-not-proven</c></summary>
internal sealed class ChoiceNotProven : Rule<ChoiceNotProven.Case>
{
    public override string Name => "power/choice-not-proven";

    public override Severity Severity => Severity.Note;

    public override string Catches => "The choice of outlets may use the fullest rating more than another choice would.";

    public override string Why => "The search was cut short: an evener choice may exist, which nobody found.";

    public override string Cures => "Fix circuits by hand where you know better.";

    public override Publication Source => Publication.Arithmetic;

    // One question for the gig.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Circuits.Count == 0 ? [] : [new Case(plan.Power)];

    protected override Said Say(Case found) => new(
        $"Choice of outlets: the fullest rating is used up to {found.Gap} more than the least that may be reached.",
        "Fix circuits by hand where you know better.",
        $"{found.Gap}");

    internal sealed record Case(PowerPlan Power)
        : Judgement(Address.Of("power") / "choice", Power.Distributions[0].At, Power.Gap > Some ? Verdict.Fails : Verdict.Holds, Power.RestsOn)
    {
        // What is less can not be told from what was rounded.
        private const double Some = 0.001;

        public Ratio Gap => Ratio.FromPercent(100 * Power.Gap);
    }
}
