using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/leading-load</c></summary>
internal sealed class LeadingLoad : Rule<LeadingLoad.Case>
{
    public override string Name => "power/leading-load";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "What hangs on a generator leads by more than its regulator holds: filters of idle electronics, with little else on.";

    public override string Why => "The regulator loses its grip, the voltage climbs by itself, and everything on the set is at risk.";

    public override string Cures => "Switch filters on late and something that heats early, put a reactor or a load bank on it, or hire a larger set.";

    public override Publication Source => Publication.CommonPractice;

    // Without a limit it is asked together with what else is missing.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Generators.Where(set => set.MostLeading?.Value is not null && set.Power.MostLeading.Leading.Value is not null).Select(set => new Case(set));

    protected override Said Say(Case found) => new(
        $"{found.Set.Service.Name}: {found.Kilovars} kvar lead ({StateShares.Word(found.Set.Power.MostLeading.State)}), {found.MostKilovars} kvar are borne.",
        "Switch on something that heats first, or hire a larger set.",
        $"{found.Kilovars} of {found.MostKilovars} kvar");

    internal sealed record Case(GeneratorPlan Set)
        : Judgement(Set.Service.Address / "generator" / "leading", Set.Service.At, Set.Power.MostLeading.Leading.AtMost(Set.MostLeading!), Set.Power.MostLeading.Leading.RestsOn.With(Set.MostLeading!.RestsOn))
    {
        public double Kilovars => (double)Set.Power.MostLeading.Leading.Value!.Value.Kilovoltamperes;

        public double MostKilovars => (double)Set.MostLeading!.Value!.Value.Kilovoltamperes;
    }
}
