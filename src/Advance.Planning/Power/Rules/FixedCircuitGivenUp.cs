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
        var given = plan.Power.GivenUp.ToLookup(one => one.Row);
        var written = plan.Brief.Gig.Power.Circuits;
        return written.Concat(plan.Power.GivenUp.Select(one => one.Row).Except(written)).SelectMany(row => given[row].Select(one => new Case(row, one)).DefaultIfEmpty(new Case(row, null)));
    }

    protected override Said Say(Case found) => found.GivenUp!.Reason switch
    {
        GivenUpReason.NamesNothing => new(
            $"{found.Row.Feeds} on {found.Row.Distribution} names nothing that draws current.", "Mend the name: a stack, a lighting position, a unit, wedges or a distribution.", $"{found.Row.Feeds}"),
        GivenUpReason.NoDistribution => new(
            $"{found.Row.Feeds} was fixed on {found.Row.Distribution}, and there is no such distribution.", "Mend the name, or describe the distribution.", $"{found.Row.Distribution}"),
        GivenUpReason.FixedBefore => new(
            $"{found.Row.Feeds} was fixed on {found.Row.Distribution}, and by a row before it.", "Say it once.", $"{found.Row.Feeds}"),
        GivenUpReason.NotLinked => new(
            $"{found.GivenUp.What} cannot be linked into {found.Row.Feeds}: no link outlet before it fits its inlet.", "Plan a strip and fix each on an outlet of it, or leave it out of the row.", $"{found.GivenUp.What}"),
        _ when found.GivenUp.What is { } instead => new(
            $"{found.Row.Feeds} was fixed on {found.Row.Distribution}, and hangs on {instead}.", "Free an outlet there that fits, or fix another.", $"{instead}"),
        _ => new($"{found.Row.Feeds} was fixed on {found.Row.Distribution}, and has no outlet at all.", "Free an outlet there that fits, or fix another.", $"no outlet"),
    };

    internal sealed record Case(CircuitRow Row, GivenUpCircuit? GivenUp)
        : Judgement(Address.Of("power") / "fixed" / Row.Feeds, Row.At, GivenUp is null ? Verdict.Holds : Verdict.Fails, Doubts.None);
}
