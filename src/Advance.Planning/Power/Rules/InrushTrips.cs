using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/inrush-trips</c></summary>
internal sealed class InrushTrips : Rule<InrushTrips.Case>
{
    public override string Name => "power/inrush-trips";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Everything on one circuit switched on at once draws more than its breaker lets through at an instant.";

    public override string Why => "After a blip all of it starts together, and the breaker opens.";

    public override string Cures => "Switch on one after the other, a breaker of type C or D, or fewer units on the circuit.";

    public override Publication Source { get; } = new("IEC 60898-1: instantaneous tripping from 3, 5 and 10 times the rating for types B, C and D", "", "Table 7", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Feeders.Concat(plan.Power.Circuits.Select(circuit => circuit.Outlet))
        let type = Breakers.TypeOf(point.Row?.Device ?? "")
        where type is not null && point.Row!.Rating.IsKnown && point.Loads.Count > 0
        select new Case(point, RmsOf(point), Threshold(point, Breakers.HoldsBelow(type!.Value)));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Point.Name}: nobody knows what all on it draw when they start.", "Write inrush in the stock.", $"unknown")
        : new(
            $"{found.Point.Name}: {found.Rms.Value!.Value} when all start at once, and {found.Point.Row!.Device} may open from {found.Most.Value!.Value}.",
            "Switch on one after the other, a breaker of type C or D, or fewer units on the circuit.",
            $"{found.Rms.Value!.Value} of {found.Most.Value!.Value}");

    private static Figure<ElectricCurrent> Threshold(SupplyPoint point, int times) =>
        Sum.Of($"{point.Name}, lowest instantaneous tripping", "I = k · n", Publication.CommonPractice)
            .Put("k", Figure.Count(times))
            .Put("n", Figure.From(point.Row!.Rating))
            .Gives((factor, rated) => rated * factor);

    // Inrush is given as a peak; a breaker answers to the rms value of the wave, pole by pole.
    private static Figure<ElectricCurrent> RmsOf(SupplyPoint point)
    {
        var poles = point.Lines.Select(line => RmsOn(point, line)).ToList();
        return poles.Find(pole => pole.Value is null) ?? poles.MaxBy(pole => pole.Value!.Value.Amperes)!;
    }

    private static Figure<ElectricCurrent> RmsOn(SupplyPoint point, int line) =>
        Sum.Of($"{point.Name}, inrush as rms", "I = Σ iᵢ / √2", Publication.Arithmetic)
            .PutAll("iᵢ", point.Draws.Where(draw => draw.Wiring.Lines.Contains(line)).Select(draw => draw.Load.Inrush))
            .Gives(peaks => ElectricCurrent.FromAmperes(peaks.Values.Sum(peak => peak.Amperes) / Math.Sqrt(2)));

    internal sealed record Case(SupplyPoint Point, Figure<ElectricCurrent> Rms, Figure<ElectricCurrent> Most)
        : Judgement(Point.Address / "inrush", Point.At, Rms.AtMost(Most), Rms.RestsOn.With(Most.RestsOn));
}
