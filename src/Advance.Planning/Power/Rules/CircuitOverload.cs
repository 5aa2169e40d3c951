using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>power/circuit-overload</c></summary>
internal sealed class CircuitOverload : Rule<CircuitOverload.Case>
{
    public override string Name => "power/circuit-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A circuit, a distribution or a service carries more in use than its protective device or its connector is rated for.";

    public override string Why => "It trips in the show, at the worst moment; or, where the device is slow, the connector burns.";

    public override string Cures => "Move loads to another circuit or service, ask for a larger one, or have what shares it switched off.";

    public override Publication Source { get; } = new("IEC 60364-4-43: the device carries the design current", "", "433.1", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var outlets = plan.Power.Circuits.Select(circuit => circuit.Address).ToHashSet();
        return
            from point in plan.Power.Limits
            from use in point.Legs
            where !IsToldBelow(point, use, outlets)
            select new Case(point, use, plan.Power.ToFree);
    }

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new(
            $"{found.Name}: {Unknown(found)}.",
            "Give its rating and the draw of all that hangs on it.",
            $"unknown")
        : new(
            $"{found.Name}: {found.Use.InUse.Value!.Value} in use ({StateShares.Word(found.Use.State)}), {found.Point.Limit.Value!.Value} allowed{found.Point.SharedWords}.",
            found.ToFree.Count > 0 ? FreeCircuits.Say(found.ToFree) : "Move loads to another circuit or service, or have what shares it switched off.",
            $"{found.Use.InUse.Value!.Value} of {found.Point.Limit.Value!.Value}");

    // A draw that nobody knows is told of its circuit, and not again of all that carries it.
    private static bool IsToldBelow(SupplyPoint point, LegUse use, HashSet<Address> outlets) =>
        use.InUse.Value is null && point.Limit.Value is not null && !outlets.Contains(point.Address) && point.Loads.Any(load => load.InUse.Value is null);

    private static Words Unknown(Case found) => found.Point.Limit.Value is null ? "nobody knows what it may carry" : "nobody knows what all draws that hangs on it";

    internal sealed record Case(SupplyPoint Point, LegUse Use, IReadOnlyList<CircuitRow> ToFree)
        : Judgement(Point.Address, Point.At, Use.InUse.AtMost(Point.Limit), Use.InUse.RestsOn.With(Point.Limit.RestsOn))
    {
        public string Name => Use.Leg.Length > 0 ? $"{Point.Name} {Use.Leg}" : Point.Name;
    }
}
