using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Works out what a truss passes on to its picks of what pushes it sideways, and how that bends it. Its chains hold it sideways as far as each carries:
/// a push is shared as a weight in its place would be.
/// </summary>
internal sealed class SidewaysStatics(PlacedTruss truss, LiftStudy? study, IReadOnlyList<CarriedLoad> pushes, TrussCapacity capacity, Angle straight)
{
    private static readonly Figure<Force> None = new(Force.Zero, Doubts.None, Reason.Derived.It);

    // What it hangs by when all is level, where it is known and every push is somewhere along it.
    private IReadOnlyList<int> Holding => study is null || pushes.Any(push => !push.IsWithin(study.Hung.Length)) ? []
        : [.. Enumerable.Range(0, study.Hung.Hoists.Count).Where(hoist => study.Rigid.Levels[hoist] > 0)];

    private Doubts Where => pushes.Aggregate(truss.AlongRestsOn, (sum, push) => sum.With(push.Where));

    /// <summary>What comes on one pick, either way; null where nothing pushes.</summary>
    public Figure<Mass>? On(PlacedPick pick, int index) => pushes.Count == 0 ? null
        : Sum.Of($"{pick.Name}, pushed sideways, either way", "H = Σ Fⱼ · cⱼ", Statics.ShearFlexibleBeam)
            .PutAll("Fⱼ", pushes.Select(push => push.Weight))
            .PutAll("cⱼ", SharesOf(index).Select(share => new Figure<double>(share, Where, Reason.Derived.It)))
            .Gives((forces, shares) => Mass.FromKilograms(forces.Values.Zip(shares.Values, (force, share) => force.Kilograms * share).Sum()));

    /// <summary>All of it.</summary>
    /// <param name="picks">With what their chains pull sideways.</param>
    /// <param name="hanging">Moment and shear of what hangs, as a part of what is allowed.</param>
    public TrussSideways Of(IReadOnlyList<PickPlan> picks, Figure<double> hanging)
    {
        var (moment, pressed) = (pushes.Count == 0 ? new Figure<Torque>(Torque.Zero, Doubts.None, Reason.Derived.It) : MomentOf(picks), PressedBy(picks));
        var together = Sum.Of($"{truss.Name}, what hangs, pushes and presses together", "u = t + s + n", RiggingStandards.Truss)
            .Put("t", hanging)
            .Put("s", Part(moment, capacity.Sideways, one => one.NewtonMeters))
            .Put("n", Part(pressed, capacity.Pressed, one => one.Newtons))
            .Gives((hangs, bends, presses) => hangs + bends + presses);
        return new TrussSideways(pushes, moment, capacity.Sideways, pressed, capacity.Pressed, together) { Bowed = Bowed() };
    }

    private IEnumerable<double?> SharesOf(int index) => Holding.Count == 0 ? pushes.Select(_ => (double?)null) : new LoadShares(study!.Hung, study.Rigid).Of(index, pushes).Select(share => (double?)share);

    // Of pushes that nobody knows there is no moment; on one pick a truss turns until nothing bends it.
    private Figure<Torque> MomentOf(IReadOnlyList<PickPlan> picks)
    {
        var holding = Holding;
        if (holding.Count < 2 || pushes.Any(push => push.Weight.Value is null))
        {
            return new Figure<Torque>(null, pushes.Aggregate(Where, (sum, push) => sum.With(push.Weight.RestsOn)), Reason.Derived.It);
        }

        var (hung, at) = (study!.Hung, Place());
        var left = pushes.Select(push => (Push: push, Left: push.LeftOf(at))).Where(one => one.Left.Share > 0).ToList();
        var held = holding.Where(index => hung.Hoists[index].At < at).ToList();
        return Sum.Of($"{truss.Name}, bent sideways, at {Length.FromMeters(at)}", "M = 9.80665 · |Σ Hᵢ · aᵢ − Σ Fⱼ · bⱼ|", Statics.Equilibrium)
            .PutAll("Hᵢ", held.Select(index => picks[index].Pushed!))
            .PutAll("aᵢ", held.Select(index => Metres(at - hung.Hoists[index].At)))
            .PutAll("Fⱼ", left.Select(one => one.Push.Weight with { Value = one.Push.Weight.Value!.Value * one.Left.Share }))
            .PutAll("bⱼ", left.Select(one => Metres(one.Left.Lever)))
            .Gives((holds, arms, forces, levers) => Torque.FromNewtonMeters(TrussStatics.Gravity * Math.Abs(Turned(holds, arms) - Turned(forces, levers))));
    }

    // Only where its maker says how stiff it is that way; in shear it is taken as stiff.
    private Figure<Length> Bowed()
    {
        var stiff = truss.Kind?.Truss?.SidewaysBending;
        var isKnown = stiff is { IsKnown: true } && Holding.Count > 1 && pushes.All(push => push.Weight.Value is not null);
        var far = isKnown ? Solved(stiff!.Value.Value.NewtonSquareMetres, null).Lowest.Value : (double?)null;
        return new Figure<Length>(far is { } low ? Length.FromMeters(Math.Max(0, -low)) : null, pushes.Aggregate(Where.With(Doubts.Of(stiff?.Doubt)), (sum, push) => sum.With(push.Weight.RestsOn)), Reason.Derived.It);
    }

    private BeamSolution Solved(double bending, double? shear)
    {
        var hung = study!.Hung;
        BeamLoad Of(CarriedLoad push)
        {
            var newtons = push.Weight.Value!.Value.Kilograms * TrussStatics.Gravity;
            return push.To is { } end ? BeamLoad.Uniform(push.From!.Value, end, newtons / (end - push.From.Value)) : BeamLoad.Point(push.From!.Value, newtons);
        }

        return ContinuousBeam.Solve(new Beam(hung.Length, bending, shear, [.. pushes.Select(Of)]), [.. Holding.Select(index => new BeamSupport(hung.Hoists[index].At))]);
    }

    // Where it bends most.
    private double Place()
    {
        var diagram = Solved(study!.Hung.Beam.Bending, study.Hung.Beam.Shear).Diagram;
        return diagram.Sagging.Value > -diagram.Hogging.Value ? diagram.Sagging.At : diagram.Hogging.At;
    }

    // Within what counts as straight nothing is reckoned. Chains that lean in towards each other press it, out from each other pull it: all that pulls left of a place goes through it.
    private Figure<Force> PressedBy(IReadOnlyList<PickPlan> picks)
    {
        var along = picks.Select(pick => pick.Lean is { } lean ? truss.Truss.RunsUpstage ? -lean.Pull.TowardsY : -lean.Pull.TowardsX : 0).ToList();
        if (!picks.Any(pick => pick.Lean is { } lean && lean.Lean.Value > straight))
        {
            return None;
        }

        var sums = picks.Select((_, index) => picks.Take(index + 1).Select((pick, one) => (pick.Lean?.Pull.Pull.Value?.Kilograms ?? 0) * along[one]).Sum()).ToList();
        var last = sums.FindIndex(sum => Math.Abs(sum) >= sums.Max(Math.Abs));
        return Sum.Of($"{truss.Name}, pressed or pulled from end to end", "N = 9.80665 · |Σ Hᵢ · cᵢ|", Statics.Equilibrium)
            .PutAll("Hᵢ", picks.Take(last + 1).Where(pick => pick.Lean is not null).Select(pick => pick.Lean!.Pull.Pull))
            .PutAll("cᵢ", picks.Take(last + 1).Index().Where(one => one.Item.Lean is not null).Select(one => new Figure<double>(along[one.Index], one.Item.Lean!.Off.RestsOn, Reason.Derived.It)))
            .Gives((pulls, parts) => Force.FromNewtons(TrussStatics.Gravity * Math.Abs(pulls.Values.Zip(parts.Values, (pull, part) => pull.Kilograms * part).Sum())));
    }

    // What is nothing needs no limit.
    private static Figure<double> Part<T>(Figure<T> used, Figure<T> allowed, Func<T, double> number)
        where T : struct, IComparable<T> => used.Value is { } nothing && number(nothing) == 0 ? new Figure<double>(0, used.RestsOn, Reason.Derived.It)
        : Sum.Of("part of what is allowed", "u = F / Fa", RiggingStandards.Truss).Put("F", used).Put("Fa", allowed).Gives((one, most) => number(one) / number(most));

    private static double Turned(Terms<Mass> forces, Terms<Length> arms) => forces.Values.Zip(arms.Values, (force, arm) => force.Kilograms * arm.Meters).Sum();

    private static Figure<Length> Metres(double metres) => new(Length.FromMeters(metres), Doubts.None, Reason.Derived.It);
}
