using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/shared-with-strangers</c></summary>
internal sealed class SharedWithStrangers : Rule<SharedWithStrangers.Case>
{
    public override string Name => "power/shared-with-strangers";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Other people draw from a service that the show hangs on.";

    public override string Why => "Their kettle trips the show, and nobody on the crew can switch it off.";

    public override string Cures => "Have a service of your own, or agree in writing what is off when.";

    public override Publication Source => Publication.CommonPractice;

    // Where the service is full, that is told, and with whom it is shared.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Services
        where plan.Power.Circuits.Any(circuit => circuit.Outlet.Origin == point.Service)
        select new Case(point, point.Service!.SharedWith.Count > 0 && !IsFull(point, plan.Brief.Company.Policies.CircuitUse) ? Verdict.Fails : Verdict.Holds);

    protected override Said Say(Case found) => new(
        $"{found.Point.Name} is shared with {string.Join(", ", found.Point.Service!.SharedWith.Select(other => other.What))}.",
        "Have a service of your own, or agree in writing what is off when.",
        $"{string.Join(", ", found.Point.Service!.SharedWith.Select(other => other.What))}");

    private static bool IsFull(SupplyPoint point, double percent) =>
        point.Legs.Any(use => use.InUse.Value is { } current && point.Limit.Value is { } limit && current.Amperes > limit.Amperes * percent / 100);

    internal sealed record Case(SupplyPoint Point, Verdict Verdict)
        : Judgement(Point.Address / "shared", Point.Service!.At, Verdict, Point.Service!.SharedWith.Aggregate(Doubts.None, (sum, other) => sum.With(Doubts.Of(other.InUse.Doubt))));
}
