using Advance.Domain.Figures;
using Advance.Domain.Findings;
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
        from circuit in plan.Power.Circuits
        let times = Times(circuit.Row.Device)
        where times > 0 && circuit.Inrush.Value is not null && circuit.Row.Rating.IsKnown
        select new Case(circuit, Threshold(circuit, times));

    protected override Said Say(Case found) => new(
        $"{found.Circuit.Name}: {found.Rms.Value!.Value} when all start at once, and {found.Circuit.Row.Device} may open from {found.Most.Value!.Value}.",
        "Switch on one after the other, a breaker of type C or D, or fewer units on the circuit.",
        $"{found.Rms.Value!.Value} of {found.Most.Value!.Value}");

    private static int Times(string device) => device.Length == 0 ? 0 : device[0] switch
    {
        'B' => 3,
        'C' => 5,
        'D' => 10,
        _ => 0,
    };

    private static Figure<ElectricCurrent> Threshold(Circuit circuit, int times) =>
        Sum.Of($"{circuit.Name}, lowest instantaneous tripping", "I = k · n", Publication.CommonPractice)
            .Put("k", Figure.Count(times))
            .Put("n", Figure.From(circuit.Row.Rating))
            .Gives((factor, rated) => rated * factor);

    // Inrush is given as a peak; a breaker answers to the rms value of the wave.
    private static Figure<ElectricCurrent> RmsOf(Circuit circuit) =>
        Sum.Of($"{circuit.Name}, inrush as rms", "I = i / √2", Publication.Arithmetic).Put("i", circuit.Inrush).Gives(peak => peak / Math.Sqrt(2));

    internal sealed record Case(Circuit Circuit, Figure<ElectricCurrent> Most)
        : Judgement(Circuit.Address / "inrush", Circuit.Chain.At, RmsOf(Circuit).AtMost(Most), Circuit.Inrush.RestsOn)
    {
        public Figure<ElectricCurrent> Rms => RmsOf(Circuit);
    }
}
