using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>sound/address-taken</c></summary>
internal sealed class AddressTaken : Rule<AddressTaken.Case>
{
    public override string Name => "sound/address-taken";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Two units were written the same address, one was written outside the gig's network, or the network has none left.";

    public override string Why => "Two units of one address answer by turns, and one outside the network does not answer at all.";

    public override string Cures => "Leave network-address out, so that a free one is chosen, or write one that is free.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var gig = plan.Brief.Gig.Network?.Subnet;
        if (gig is { IsKnown: false })
        {
            return [];
        }

        var subnet = gig?.Value ?? plan.Brief.Company.Policies.Subnet;
        var units = plan.Drive.Units.Where(unit => unit.HasPort).ToList();
        return units.Select((unit, index) => CaseOf(unit, units.Take(index).FirstOrDefault(other => other.Network is not null && other.Network == unit.Network), subnet));
    }

    protected override Said Say(Case found)
    {
        var unit = found.Unit;
        if (unit.Network is not { } address)
        {
            return unit.Fixed is null
                ? new($"{unit.Name}: no address left in {found.Subnet.ToString()}.", "Write a larger subnet.", $"{unit.Name}, none left")
                : new($"{unit.Name}: its address is still open.", "Write network-address, or leave it out.", $"{unit.Name}, open");
        }

        return found.Other is { } other
            ? new($"{unit.Name}: {address.ToString()} is the address of {other.Name} already.", "Write another, or leave it out.", $"{address.ToString()}, {other.Name}")
            : new($"{unit.Name}: {address.ToString()} is outside {found.Subnet.ToString()}.", "Write one inside, or another subnet.", $"{address.ToString()}, {found.Subnet.ToString()}");
    }

    private static Case CaseOf(NetworkUnit unit, NetworkUnit? other, Subnet subnet)
    {
        var verdict = unit.Network is { } address
            ? other is null && subnet.Holds(address) ? Verdict.Holds : Verdict.Fails
            : unit.Fixed is null ? Verdict.Fails : Verdict.CannotBeJudged;
        return new Case(unit, other, subnet, verdict);
    }

    internal sealed record Case(NetworkUnit Unit, NetworkUnit? Other, Subnet Subnet, Verdict Verdict)
        : Judgement(Unit.NetworkAt, Unit.Fixed?.At ?? Unit.At, Verdict, Unit.RestsOn);
}
