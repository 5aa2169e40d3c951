using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/grouped-or-coiled</c></summary>
internal sealed class GroupedOrCoiled : Rule<GroupedOrCoiled.Case>
{
    public override string Name => "power/grouped-or-coiled";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "What a lead may have to carry is more than it carries as it lies: bunched with others, coiled where it is too long, covered, in the heat, or with third harmonics in four cores and more.";

    public override string Why => "It warms up over the evening where nobody sees it: under the ramp, in the heap of cable behind the distribution.";

    public override string Cures => "Lay leads apart, spread out what is left over, take a shorter or a thicker one, or use another way.";

    public override Publication Source => Bs7671.Table4C1;

    // One case for a place; the worst lead there speaks. What is too much for the lead alone is told by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from lead in plan.Protection.Leads
        where lead.Place.Length > 0 && lead.AtMost.Value is not null && lead.AtMost.AtMost(lead.Bare) == Verdict.Holds
        group lead by lead.Place into place
        let worst = place.MaxBy(lead => Rank(lead))!
        select new Case(worst, place.Count(lead => lead.AtMost.AtMost(lead.Carries) != Verdict.Holds));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{PlaceOf(found.Lead)} ({found.Lead.Bites}): nobody knows what it carries there.", "Ask what covered cable carries, and write cover-factor; write the size of the lead in the stock.", $"unknown")
        : new(
            $"{PlaceOf(found.Lead)} ({found.Lead.Bites}): up to {found.Lead.AtMost.Value!.Value}, and it carries {found.Lead.Carries.Value!.Value} there{(found.Count > 1 ? $"; {found.Count - 1} more like it" : "")}.",
            "Lay leads apart, spread out what is left over, or take a shorter or a thicker one.",
            $"{found.Lead.AtMost.Value!.Value} of {found.Lead.Carries.Value!.Value}");

    private static string PlaceOf(LeadCapacity lead) => lead.Place == lead.Run.Label ? lead.Place : $"{lead.Run.Label} in {lead.Place}";

    private static double Rank(LeadCapacity lead) => lead.Carries.Value is { Amperes: > 0 } carries ? lead.AtMost.Value!.Value.Amperes / carries.Amperes : double.MaxValue;

    internal sealed record Case(LeadCapacity Lead, int Count)
        : Judgement((Lead.Device?.Address ?? Address.Of("power")) / "lies" / Lead.Place, Lead.Device?.At ?? Domain.Facts.Mark.Nowhere, Lead.AtMost.AtMost(Lead.Carries), Lead.AtMost.RestsOn.With(Lead.Carries.RestsOn));
}
