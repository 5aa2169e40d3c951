using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>power/structure-not-bonded</c></summary>
internal sealed class StructureNotBonded : Rule<StructureNotBonded.Case>
{
    public override string Name => "power/structure-not-bonded";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Metal that electrical things stand on or hang from, a deck, a truss, a tower, a barrier, has no bonding conductor.";

    public override string Why => "A cable that chafes through puts mains on metal that everybody leans on, and nothing opens.";

    public override string Cures => "Bond it to the earth bar of the distribution that feeds what is on it, and write under bonds to where the conductor goes.";

    public override Publication Source { get; } = new("BS 7909: bonding of metal structures; BS 7671, 740", "2011", "7.4", Standing.FromMemory);

    private const string None = "none";

    // Where nobody has said anything of bonds it is one question.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var (structures, bonds) = (BondedStructure.Of(plan), plan.Brief.Gig.Power.Bonds);
        return structures.Count > 0 && bonds.Count == 0
            ? [Unasked(structures)]
            : [.. bonds.Select(Of), .. structures.Where(structure => !bonds.Any(structure.IsIn)).Select(structure => new Case(structure.Name, structure.At, Verdict.Fails, Doubts.None))];
    }

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"Electrical things on metal, and nobody has said to what it is bonded: {found.Structure}.", "Write under bonds to where each bonding conductor goes.", $"unknown")
        : new($"Electrical things on metal that nothing bonds to earth: {found.Structure}.", "Bond it to the earth bar of the distribution that feeds what is on it.", $"none");

    private static Case Of(BondRow bond)
    {
        var isNone = bond.To.Is(out var to) && string.Equals(to.Trim(), None, StringComparison.OrdinalIgnoreCase);
        return new Case(bond.Structure, bond.At, isNone ? Verdict.Fails : bond.To.IsKnown ? Verdict.Holds : Verdict.CannotBeJudged, Doubts.Of(bond.To.Doubt));
    }

    private static Case Unasked(IReadOnlyList<BondedStructure> structures) => new(
        string.Join(", ", structures.Select(structure => structure.Name)), structures[0].At, Verdict.CannotBeJudged, Doubts.Of(new Doubt("power / bonds", structures[0].At, LeftOut: true)), IsUnasked: true);

    internal sealed record Case(string Structure, Mark At, Verdict Verdict, Doubts RestsOn, bool IsUnasked = false)
        : Judgement(IsUnasked ? Address.Of("power") / "bond" : Address.Of("power") / "bond" / Structure, At, Verdict, RestsOn);
}
