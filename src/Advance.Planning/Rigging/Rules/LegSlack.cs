using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/leg-slack</c></summary>
internal sealed class LegSlack : Rule<LegSlack.Case>
{
    public override string Name => "rigging/leg-slack";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A leg of a bridle would have to push: what hangs on it is outside its points.";

    public override string Why => "The leg hangs loose, and the others carry all of it, pulled sideways.";

    public override string Cures => "Move the pick between the points, or take that leg out.";

    public override Publication Source => Handbook.Statics.Bridles;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Bridles.Where(bridle => bridle.Legs.Count > 0).Select(bridle => new Case(bridle));

    protected override Said Say(Case found) => new($"Bridle {found.Bridle.Name}: its leg to {found.Bridle.Legs.First(leg => leg.IsSlack).Point} would have to push.", "Move the pick between the points, or take that leg out.", $"{found.Bridle.Legs.First(leg => leg.IsSlack).Point}");

    internal sealed record Case(BridlePlan Bridle) : Judgement(Bridle.Address / "slack", Bridle.Bridle.At, Bridle.Legs.Any(leg => leg.IsSlack) ? Verdict.Fails : Verdict.Holds, Bridle.AtRest.RestsOn);
}
