using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/phases-unbalanced</c></summary>
internal sealed class PhasesUnbalanced : Rule<PhasesUnbalanced.Case>
{
    // Below a quarter of the rating the neutral and the fullest leg have room for any spread. Common practice, no source.
    private const double Light = 0.25;

    public override string Name => "power/phases-unbalanced";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "On a supply of two or three legs one carries much more than the mean of them.";

    public override string Why => "The full leg trips while the others idle, the neutral carries the difference, and a generator does not hold its voltage.";

    public override string Cures => "Leave circuits free to be chosen, or fix some of the full leg's loads on outlets of the others.";

    public override Publication Source => Publication.CommonPractice;

    // What is out of balance below is out of balance above: it is told at the top.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Services.Concat(plan.Power.Distributions.Where(point => point.FedBy is null))
        where point.Legs.Count > 1 && point.Loads.Count > 0
        from found in Worst(point, plan.Brief.Company.Policies.PhaseSpread)
        select found;

    protected override Said Say(Case found) => new(
        $"{found.Point.Name}: {found.Largest} on {found.Leg} is {found.Spread.Value!.Value} more than the mean of {found.Point.Legs.Count} legs ({StateShares.Word(found.State)}), {found.Most.Value!.Value} allowed.",
        "Leave circuits free to be chosen, or fix some of the full leg's loads on the others.",
        $"{found.Spread.Value!.Value} of {found.Most.Value!.Value}");

    // One case for a point: the state with the largest spread among those in which it carries something to speak of.
    private static IEnumerable<Case> Worst(SupplyPoint point, double allowed) => StateShares.States
        .Select((state, index) => (State: state, Legs: point.Legs.Select(leg => leg.InStates[index]).ToList()))
        .Where(one => one.Legs.TrueForAll(leg => leg.Value is not null) && IsLoaded(point, one.Legs))
        .Select(one => CaseOf(point, one.State, one.Legs, allowed))
        .OrderByDescending(found => found.Spread.Value!.Value.Percent)
        .Take(1);

    private static bool IsLoaded(SupplyPoint point, List<Figure<ElectricCurrent>> legs) =>
        legs.Max(leg => leg.Value!.Value.Amperes) is var most and > 0 && (point.Limit.Value is not { } limit || most >= Light * limit.Amperes);

    private static Case CaseOf(SupplyPoint point, ShowState state, List<Figure<ElectricCurrent>> legs, double allowed)
    {
        var largest = legs.FindIndex(leg => leg.Value!.Value.Amperes == legs.Max(other => other.Value!.Value.Amperes));
        var mean = Sum.Of("mean of the legs", "m = Σ Iᵢ / n", Publication.Arithmetic).PutAll("Iᵢ", legs).Put("n", Figure.Count(legs.Count)).Gives((terms, count) => ElectricCurrent.FromAmperes(terms.Values.Sum(one => one.Amperes) / count));
        var spread = Sum.Of($"{point.Name}, spread of the legs", "s = (I - m) / m", Publication.CommonPractice)
            .Put("I", legs[largest])
            .Put("m", mean)
            .Gives((full, middle) => Ratio.FromPercent(100 * (full.Amperes - middle.Amperes) / middle.Amperes));
        return new Case(point, point.Legs[largest].Leg, state, legs[largest].Value!.Value, spread, Figure.Policy("phase-spread", Ratio.FromPercent(allowed)));
    }

    internal sealed record Case(SupplyPoint Point, string Leg, ShowState State, ElectricCurrent Largest, Figure<Ratio> Spread, Figure<Ratio> Most)
        : Judgement(Point.Address / "spread", Point.At, Spread.AtMost(Most), Spread.RestsOn);
}
