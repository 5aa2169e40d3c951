using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>power/fixed-circuit-given-up</c></summary>
internal sealed class FixedCircuitGivenUp : Rule<FixedCircuitGivenUp.Case>
{
    public override string Name => "power/fixed-circuit-given-up";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A circuit fixed by hand could not be kept, or names nothing that draws current.";

    public override string Why => "Whoever wrote it counts on it.";

    public override string Cures => "Fix another outlet, free the one that is taken, or mend the name.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var given = plan.Power.GivenUp.DistinctBy(one => one.Row).ToDictionary(one => one.Row);
        return plan.Brief.Gig.Power.Circuits.Select(row => new Case(row, given.GetValueOrDefault(row)));
    }

    protected override Said Say(Case found) => found.GivenUp switch
    {
        { Names: false } => new($"{found.Row.Feeds} on {found.Row.Distribution} names nothing that draws current.", "Mend the name: a stack, a lighting position, a unit or a distribution.", $"{found.Row.Feeds}"),
        { Instead: { } instead } => new($"{found.Row.Feeds} was fixed on {found.Row.Distribution}, and hangs on {instead}.", "Free an outlet there that fits, or fix another.", $"{instead}"),
        _ => new($"{found.Row.Feeds} was fixed on {found.Row.Distribution}, and has no outlet at all.", "Free an outlet there that fits, or fix another.", $"no outlet"),
    };

    internal sealed record Case(CircuitRow Row, GivenUpCircuit? GivenUp)
        : Judgement(Address.Of("power") / "fixed" / Row.Feeds, Row.At, GivenUp is null ? Verdict.Holds : Verdict.Fails, Doubts.None);
}
