using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>stack/pushed-over</c></summary>
internal sealed class PushedOver : Rule<PushedOver.Case>
{
    public override string Name => "stack/pushed-over";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Out of the wind, a push of people brings something nearer to tipping or sliding than the ratio that the company asks for.";

    public override string Why => "People lean, barrows knock, and what holds only just does not hold twice.";

    public override string Cures => "Put a barrier before it, make its base wider, or fix ballast to it.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var ratio = Figure.Policy("standing / ratio", plan.Brief.Company.Policies.Standing.Ratio);
        return plan.Standing.Site.IsOpenAir == true
            ? []
            : from item in plan.Standing.Worst
              let tips = item.Whole.WorstTipping?.Tipping
              let slides = item.Whole.WorstSliding?.Sliding
              where tips?.Value >= 1 && slides?.Value >= 1
              select new Case(item, ratio.AtMost(tips!) == Verdict.Fails, ratio.Value!.Value, ratio.AtMost(tips!) == Verdict.Holds && ratio.AtMost(slides!) == Verdict.Holds ? Verdict.Holds : Verdict.Fails);
    }

    protected override Said Say(Case found)
    {
        var edge = found.IsTipping ? found.Item.Whole.WorstTipping! : found.Item.Whole.WorstSliding!;
        var ratio = Tips.Two((found.IsTipping ? edge.Tipping : edge.Sliding)!.Value!.Value);
        return new(
            $"{found.Item.WrittenName}: a push of {edge.Push!.Value!.Value} {(found.IsTipping ? $"tips it over its {edge.Name}" : "slides it")} but for a ratio of {ratio}; {found.Asked} is asked.",
            Cures,
            $"ratio {ratio}");
    }

    internal sealed record Case(StandingItem Item, bool IsTipping, double Asked, Verdict Verdict) : Judgement(Item.Written, Item.At, Verdict, Item.RestsOn);
}
