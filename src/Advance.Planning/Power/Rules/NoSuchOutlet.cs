using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/no-such-outlet</c></summary>
internal sealed class NoSuchOutlet : Rule<NoSuchOutlet.Case>
{
    public override string Name => "power/no-such-outlet";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "No outlet of the gig takes the plug of a unit, also by way of a lead or an adapter that the shop owns.";

    public override string Why => "Somebody on site makes an adapter out of two plugs.";

    public override string Cures => "Bring a distribution with that outlet, or buy or hire an adapter that keeps the protection.";

    public override Publication Source => Publication.Arithmetic;

    // A gig that says nothing of power is asked nothing.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Distributions.Count == 0
        ? []
        : plan.Power.Unfed.Where(unfed => unfed.Reason == UnfedReason.Connector).Select(unfed => new Case(unfed.Chain.First, Verdict.Fails))
            .Concat(plan.Power.Circuits.Select(circuit => new Case(circuit.Chain.First, Verdict.Holds)));

    protected override Said Say(Case found) => new(
        $"{found.Load.Name}: no outlet takes its inlet, {found.Load.Inlet}, and no lead or adapter owned joins them.",
        "Bring a distribution with that outlet, or an adapter that keeps the protection.",
        $"{found.Load.Inlet}");

    internal sealed record Case(PowerLoad Load, Verdict Verdict) : Judgement(Load.Address / "plug", Load.At, Verdict, Doubts.None);
}
