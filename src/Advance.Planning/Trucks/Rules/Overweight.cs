using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>truck/overweight</c></summary>
internal sealed class Overweight : Rule<Overweight.Case>
{
    public override string Name => "truck/overweight";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "The load with its cases weighs more than the vehicles may carry.";

    public override string Why => "An overloaded vehicle brakes late, bursts tyres, costs the driver a fine, and is kept where it is stopped.";

    public override string Cures => "Leave something out, take a second vehicle or a larger one, or have part of it delivered.";

    public override Publication Source { get; } = new("Council Directive 96/53/EC and national road law", "", "gross vehicle weight", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        if (plan.Load.Truck is not { } truck)
        {
            return [];
        }

        // What is known of the load may be too much already, whatever the rest weighs.
        var known = truck.Payload.Value is { } most && truck.Known > most * (1 + 1e-9);
        var verdict = known ? Verdict.Fails : plan.Load.Gross.AtMost(truck.Payload);
        return [new Case(truck, plan.Load, verdict)];
    }

    protected override Said Say(Case found) => found switch
    {
        { Verdict: Verdict.CannotBeJudged, Truck.Payload.Value: null } => new(
            $"{found.Truck.Name}: nobody knows what it may carry; the load weighs {found.Truck.Known}.",
            "Write payload in the stock, from the vehicle's plate.",
            $"{found.Truck.Known}, payload unknown"),
        { Verdict: Verdict.CannotBeJudged } => new(
            $"{found.Truck.Name}: {found.Truck.Known} and what nobody weighed, {found.Most} allowed.",
            $"{(found.Load.Unweighed.Count > 0 ? $"Weigh {FewNames.Of(found.Load.Unweighed)}, and write it in the stock." : "Write how much the allowance is.")}",
            $"{found.Truck.Known} and more"),
        _ => new(
            $"{found.Truck.Name}: the load weighs {found.Truck.Known}, {found.Most} allowed.",
            $"Leave out {found.Truck.Known - found.Most}, take a second vehicle, or have part of it delivered.",
            $"{found.Truck.Known} of {found.Most}"),
    };

    internal sealed record Case(TruckLoad Truck, LoadPlan Load, Verdict Verdict)
        : Judgement(Truck.Where, Truck.At, Verdict, Load.Gross.RestsOn.With(Truck.Payload.RestsOn))
    {
        public Mass Most => Truck.Payload.Value ?? Mass.Zero;
    }
}
