using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>stack/castors</c></summary>
internal sealed class Castors : Rule<Castors.Case>
{
    public override string Name => "stack/castors";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Something stands on castors in the open air, or where the ground falls.";

    public override string Why => "Brakes slip and castors turn in, so that neither the friction nor the feet are what was counted on.";

    public override string Cures => "Take it off its dolly, or lift it off its castors with feet or wedges.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from item in plan.Standing.Worst
        let rolls = item.IsOnCastors && (plan.Standing.Site.IsOpenAir == true || item.Whole.Edges.Any(edge => edge.Slope.Value is { Degrees: > 0 }))
        select new Case(item, rolls ? Verdict.Fails : Verdict.Holds);

    protected override Said Say(Case found) => new($"{found.Item.WrittenName}: stands on castors in the open air.", Cures, "castors");

    internal sealed record Case(StandingItem Item, Verdict Verdict) : Judgement(Item.Written, Item.At, Verdict, Item.RestsOn);
}
