using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/rotation-unchecked</c></summary>
internal sealed class RotationUnchecked : Rule<RotationUnchecked.Case>
{
    public override string Name => "power/rotation-unchecked";

    public override Severity Severity => Severity.Note;

    public override string Catches => "A three-phase motor hangs on a supply whose rotation has to be measured.";

    public override string Why => "With two lines swapped up is down: the limit switches then stop nothing.";

    public override string Cures => "Measure the rotation at the point of connection and write it on the sheet before the motor is plugged in.";

    public override Publication Source { get; } = new("VDE 0100: three-phase socket-outlets give a right-hand field", "", "", Standing.Read);

    // One case for a service, however many motors.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Services
        let motors = point.Draws.Where(draw => draw.Wiring.Lines.Count == 3 && draw.Wiring.Kind is MainsWiringKind.ThreeWire or MainsWiringKind.EveryLine).Select(draw => draw.Load).ToList()
        where motors.Count > 0
        select new Case(point, [.. motors.Where(load => load.Piece?.Kind?.Mains?.Turns is { IsKnown: true, Value: true }).Select(load => load.Name)]);

    protected override Said Say(Case found) => new(
        $"{found.Point.Name}: {string.Join(", ", found.Motors)} turn the other way where two lines are swapped.",
        "Measure the rotation and write it on the sheet before they are plugged in.",
        $"{string.Join(", ", found.Motors)}");

    internal sealed record Case(SupplyPoint Point, IReadOnlyList<string> Motors)
        : Judgement(Point.Address / "rotation", Point.At, Motors.Count > 0 ? Verdict.Fails : Verdict.Holds, Doubts.None);
}
