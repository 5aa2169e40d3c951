using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/touch-voltage</c></summary>
internal sealed class TouchVoltage : Rule<TouchVoltage.Case>
{
    public override string Name => "power/touch-voltage";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Where the earth is an electrode: its resistance times the rated residual current of a circuit is more than 50 V, or the circuit has no residual-current device.";

    public override string Why => "The fault current through the ground opens no breaker: only a residual-current device does, and only if the electrode is good enough.";

    public override string Cures => "A residual-current device on every circuit, a finer one, or a better electrode.";

    public override Publication Source => Bs7671.EarthElectrode;

    // One case a service, of its worst circuit.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.ServicesInUse
        where SupplyEarthing.Of(point.Service!) == SystemEarthing.TT
        let circuits = plan.Power.Circuits.Where(circuit => circuit.Outlet.Origin == point.Service).ToList()
        where circuits.Count > 0
        select circuits.Select(circuit => CaseOf(point, circuit)).OrderByDescending(found => Rank(found.Verdict)).ThenByDescending(found => found.Volts.Value?.Volts ?? 0).First();

    protected override Said Say(Case found) => found.Finest is null
        ? new($"{found.Circuit.Name}: {(found.Verdict == Verdict.Fails ? "no residual-current device is before it" : "nobody knows of a residual-current device before it")}, and {found.Point.Name} has an electrode for its earth.", "A residual-current device on every circuit.", $"none")
        : found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Point.Name}: nobody knows the resistance of its electrode.", "Have it measured, and write electrode.", $"unknown")
        : new($"{found.Circuit.Name}: {found.Volts.Value!.Value} stand on its metal before {found.Finest.Value!.Value} opens, 50 V are allowed.", "A finer residual-current device, or a better electrode.", $"{found.Volts.Value!.Value}");

    private static Case CaseOf(SupplyPoint point, Circuit circuit)
    {
        var finest = ResidualDevice.Above(circuit.Outlet).Select(device => device.Rating).MinBy(rating => rating.Value!.Value.Amperes);
        var electrode = point.Service!.Electrode is { } given ? Figure.From(given) : new Figure<ElectricResistance>(null, Doubts.None, Reason.Derived.It);
        var volts = Sum.Of($"{circuit.Name}, voltage on its metal in a fault", "U = R · n", Bs7671.EarthElectrode)
            .Put("R", electrode)
            .Put("n", finest ?? new Figure<ElectricCurrent>(null, Doubts.Of(point.Service.ResidualProtection.Doubt), Reason.Derived.It))
            .Gives(EarthElectrodes.TouchVoltage);
        return new Case(point, circuit, finest, volts, finest is null && IsSurelyNone(circuit.Outlet));
    }

    // Strips have no devices of their own; what has one, and says nothing of a residual one, is not known.
    private static bool IsSurelyNone(SupplyPoint outlet) =>
        outlet.Upwards.All(above => (above.Row is null or { Device.Length: 0 } or { Residual.IsKnown: true }) && (above.Service is null or { ResidualProtection.IsKnown: true }));

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Fails => 2,
        Verdict.CannotBeJudged => 1,
        _ => 0,
    };

    internal sealed record Case(SupplyPoint Point, Circuit Circuit, Figure<ElectricCurrent>? Finest, Figure<ElectricPotential> Volts, bool IsSurelyNone)
        : Judgement(Point.Address / "touch-voltage", Point.Service!.At, Judge(Volts, IsSurelyNone), Volts.RestsOn.With(Doubts.Of(Point.Service!.Earthing.Doubt)))
    {
        private static Verdict Judge(Figure<ElectricPotential> volts, bool isSurelyNone) =>
            isSurelyNone ? Verdict.Fails : volts.AtMost(new Figure<ElectricPotential>(EarthElectrodes.Touch, Doubts.None, Reason.Derived.It));
    }
}
