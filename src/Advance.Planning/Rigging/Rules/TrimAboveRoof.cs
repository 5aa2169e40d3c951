using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/trim-above-roof</c></summary>
internal sealed class TrimAboveRoof : Rule<TrimAboveRoof.Case>
{
    public override string Name => "rigging/trim-above-roof";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A truss is to hang as high as a point that it hangs from, or higher.";

    public override string Why => "It cannot be lifted there, and everything cut to that height is wrong.";

    public override string Cures => "A lower trim.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from truss in plan.Rigging.Trusses
        from pick in truss.Picks
        let point = plan.Rigging.Above(pick)
        where point is not null && truss.Placed.Trim.Value is not null
        select new Case(truss, pick, point);

    protected override Said Say(Case found) => new($"{found.Pick.Name}: trim {found.Truss.Placed.Trim.Value!.Value} above the floor, and {found.Point.Name} is at {found.Point.Height}.", "A lower trim.", $"{found.Truss.Placed.Trim.Value!.Value} of {found.Point.Height}");

    internal sealed record Case(TrussPlan Truss, PickPlan Pick, HangsOn Point) : Judgement(
        Pick.Address / "trim", Pick.Placed.Pick.At, Truss.Placed.Trim.Value!.Value < Point.Height ? Verdict.Holds : Verdict.Fails, Truss.Placed.Trim.RestsOn.With(Point.RestsOn));
}
