using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>cable/too-many-joins</c></summary>
internal sealed class TooManyJoins : Rule<TooManyJoins.Case>
{
    public override string Name => "cable/too-many-joins";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A run is made of more leads joined together than the company wants.";

    public override string Why => "Each join is one more thing that is pulled apart, gets wet or goes bad, and it lies where nobody looks.";

    public override string Cures => "Hire one longer lead, or accept the joins.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Cables.Runs.Where(run => run.Leads.Count > 0).Select(run => new Case(run, Figure.Count(run.Joins).AtMost(run.MostJoins)));

    protected override Said Say(Case found) => new(
        $"{found.Run.Label}: {found.Run.Joins} {(found.Run.Joins == 1 ? "join" : "joins")}, {found.Run.MostJoins.Value!.Value} at most ({string.Join(" + ", found.Run.Leads.Select(lead => lead.Name))}).",
        $"Hire one lead of {found.Run.Needed.Value!.Value} or more.",
        $"{found.Run.Joins} joins, {found.Run.MostJoins.Value!.Value} at most");

    internal sealed record Case(Run Run, Verdict Verdict) : Judgement(Run.Address, Run.Link.At, Verdict, Run.Needed.RestsOn);
}
