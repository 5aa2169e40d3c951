using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/fixed-circuit-costs</c></summary>
internal sealed class FixedCircuitCosts : Rule<FixedCircuitCosts.Case>
{
    public override string Name => "power/fixed-circuit-costs";

    public override Severity Severity => Severity.Note;

    public override string Catches => "Circuits fixed by hand make the fullest rating fuller than it need be.";

    public override string Why => "What was fixed for a reason last year fills an outlet, a box or a service this year.";

    public override string Cures => "Leave them free, or fix them elsewhere.";

    public override Publication Source => Publication.Arithmetic;

    // One question for the gig.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Circuits.Any(circuit => circuit.Chain.Row is not null) ? [new Case(plan.Power)] : [];

    protected override Said Say(Case found) => new(
        $"Fixed by hand: {string.Join(", ", found.Power.Costly!.Rows.Select(row => $"{row.Feeds} on {row.Distribution}"))}. The fullest rating is used {found.Power.Costly.Now}; were they free, {found.Power.Costly.Free} or less.",
        "Leave them free, or fix them elsewhere.",
        $"{found.Power.Costly.Now}, {found.Power.Costly.Free} were they free");

    internal sealed record Case(PowerPlan Power)
        : Judgement(Address.Of("power") / "fixed", (Power.Costly?.Rows[0] ?? Power.Circuits.First(circuit => circuit.Chain.Row is not null).Chain.Row!).At, Power.Costly is null ? Verdict.Holds : Verdict.Fails, Power.RestsOn);
}
