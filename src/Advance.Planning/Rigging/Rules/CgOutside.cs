using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/cg-outside</c></summary>
internal sealed class CgOutside : Rule<CgOutside.Case>
{
    public override string Name => "rigging/cg-outside";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "The centre of gravity of a truss lies beyond its outermost pick.";

    public override string Why => "It turns until that is under one chain, and everything on it slides.";

    public override string Cures => "Move a pick out, or weight in.";

    public override Publication Source => Handbook.Statics.Equilibrium;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.IsInside is not null && truss.Centre.Value is not null).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new($"{found.Truss.Name}: its centre of gravity is {found.Truss.Centre.Value!.Value} along it, beyond its outermost pick.", "Move a pick out, or weight in.", $"{found.Truss.Centre.Value!.Value}");

    internal sealed record Case(TrussPlan Truss) : Judgement(Truss.Address / "centre", Truss.Placed.Truss.At, Truss.IsInside == true ? Verdict.Holds : Verdict.Fails, Truss.Centre.RestsOn);
}
