using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/allowance-nowhere</c></summary>
internal sealed class AllowanceNowhere : Rule<AllowanceNowhere.Case>
{
    public override string Name => "power/allowance-nowhere";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Power is allowed for kit that is not chosen yet, and nothing says which service or distribution it hangs on.";

    public override string Why => "It is counted on none of them, so that all of them look emptier than they will be.";

    public override string Cures => "Write what it hangs on: lighting 18 kW fed by service A.";

    public override Publication Source => Publication.Arithmetic;

    // Where the venue has told of no service, that is one question, and not another for each allowance.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Services.Count == 0 && plan.Power.Distributions.Count == 0
        ? []
        : plan.Power.Allowances.Select(allowance => new Case(allowance, VerdictOf(allowance)));

    protected override Said Say(Case found) => new(
        $"The allowance for {found.Allowance.Row.What} hangs on {(found.Allowance.Row.FedBy.Length > 0 ? $"{found.Allowance.Row.FedBy}, which nobody has described" : "nothing that anybody named")}: it is counted nowhere.",
        "Write what it hangs on: lighting 18 kW fed by service A.",
        $"{found.Allowance.Row.What}");

    // An allowance that says neither how many watts nor how many kilograms may be no power at all.
    private static Verdict VerdictOf(PowerAllowance allowance) =>
        allowance.On.Length > 0 ? Verdict.Holds : allowance.Row.Draw is null ? Verdict.CannotBeJudged : Verdict.Fails;

    internal sealed record Case(PowerAllowance Allowance, Verdict Verdict)
        : Judgement(Allowance.Address, Allowance.Row.At, Verdict, Doubts.Of(Allowance.Row.Doubt));
}
