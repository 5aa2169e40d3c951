using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How a truss bends in the worst of its cases while it moves, worked out from what pulls left of the place: statics alone.</summary>
internal sealed class TrussForces(PlacedTruss truss, IReadOnlyList<CarriedLoad> loads, LiftStudy? study, TrussCapacity capacity, double dynamic, Doubts where)
{
    // So near to a place that no spread load weighs anything between, in metres.
    private const double Hair = 1e-9;

    // A chain that pulls less than this, in newtons, is slack.
    private const double Slack = 1e-6;

    /// <summary>Sagging.</summary>
    public TrussForce<Torque> Sagging => Moment("sagging", study?.Moving.Sagging, 1, capacity.Sagging);

    /// <summary>Over a pick.</summary>
    public TrussForce<Torque> Hogging => Moment("hogging", study?.Moving.Hogging, -1, capacity.Hogging);

    /// <summary>Shear.</summary>
    public TrussForce<Force> Shear
    {
        get
        {
            var most = study?.Moving.Shear;
            var name = $"{truss.Name}, shear, moving";
            var worst = Sum.Of(name, "V = φ · v", Statics.Equilibrium)
                .Put("φ", Figure.Policy("dynamic-factor", dynamic))
                .Put("v", most is null ? new Figure<Force>(null, Doubts, Reason.Derived.It) : AtRest(name, most))
                .Gives((factor, force) => factor * force);
            return new TrussForce<Force>(worst, capacity.Shear, Where(most));
        }
    }

    /// <summary>Moment and shear together, of the cases in which nothing is gone; 1 is all of it.</summary>
    public Figure<double> Together
    {
        get
        {
            var isKnown = study is not null && capacity.Sagging.Value is not null && capacity.Shear.Value is not null && (capacity.Hogging.Value is not null || study.Moving.Hogging is { Value: 0 });
            var limits = capacity.Over([.. truss.Picks.Select(_ => (double?)null)], dynamic);
            return isKnown && LiftUse.Worst(study!.Moving.States.Select(limits.UseOf)) is { At: { } at } worst
                ? TogetherAt(at, worst.Case, limits)
                : new Figure<double>(null, Doubts, Reason.Derived.It);
        }
    }

    // Just left and just right of a place shear is not the same.
    private Figure<double> TogetherAt(double at, LiftCase lift, LiftCapacities limits)
    {
        var diagram = study!.Moving.States.First(one => one.Case == lift && one.Diagram is not null).Diagram!;
        var (moment, shear) = (diagram.MomentAt(at), Math.Max(Math.Abs(diagram.ShearAt(at)), Math.Abs(diagram.ShearLeftOf(at))));
        var allowed = moment > 0 || capacity.Hogging.Value is null ? capacity.Sagging : capacity.Hogging;
        var formula = capacity.Adds switch
        {
            MomentAndShear.Squared => "u = √((M / Ma)² + (V / Va)²)",
            MomentAndShear.Apart => "u = max(M / Ma, V / Va)",
            _ => "u = M / Ma + V / Va",
        };
        return Sum.Of($"{truss.Name}, moment and shear together, moving, {WhereAt(at, lift)}", formula, RiggingStandards.Truss)
            .Put("M", new Figure<Torque>(Torque.FromNewtonMeters(dynamic * Math.Abs(moment)), Doubts, Reason.Derived.It))
            .Put("Ma", allowed)
            .Put("V", new Figure<Force>(Force.FromNewtons(dynamic * shear), Doubts, Reason.Derived.It))
            .Put("Va", capacity.Shear)
            .Gives((bends, bears, shears, holds) => limits.Sum(bends / bears, shears / holds));
    }

    private Doubts Doubts => loads.Aggregate(where, (sum, load) => sum.With(load.Weight.RestsOn));

    private TrussForce<Torque> Moment(string how, LiftExtreme? most, int sign, Figure<Torque> allowed)
    {
        var name = $"{truss.Name}, {how} moment, moving";
        var at = most is null ? new Figure<Torque>(null, Doubts, Reason.Derived.It) : AtRest(name, most, sign);
        var worst = Sum.Of(name, "M = φ · m", Statics.Equilibrium).Put("φ", Figure.Policy("dynamic-factor", dynamic)).Put("m", at).Gives((factor, moment) => moment * factor);
        return new TrussForce<Torque>(worst, allowed, Where(most));
    }

    private Figure<Torque> AtRest(string name, LiftExtreme most, int sign)
    {
        var (pulls, weights) = (PullsLeftOf(most, most.At), WeightsLeftOf(most.At));
        var formula = sign > 0 ? "m = 9.80665 · (Σ Rᵢ · aᵢ − Σ Wⱼ · bⱼ)" : "m = 9.80665 · (Σ Wⱼ · bⱼ − Σ Rᵢ · aᵢ)";
        return Sum.Of($"{name}, {Where(most)}, at rest", formula, Statics.Equilibrium)
            .PutAll("Rᵢ", pulls.Select(one => one.Pull))
            .PutAll("aᵢ", pulls.Select(one => LengthOf(most.At - one.At)))
            .PutAll("Wⱼ", weights.Select(one => one.Weight))
            .PutAll("bⱼ", weights.Select(one => LengthOf(one.Lever)))
            .Gives((pull, arm, weight, lever) => Torque.FromNewtonMeters(sign * TrussStatics.Gravity * (Moments(pull, arm) - Moments(weight, lever))));
    }

    // It jumps where a pick or a load is, so it is asked for on both sides of the place.
    private Figure<Force> AtRest(string name, LiftExtreme most) =>
        new[] { most.At - Hair, most.At + Hair }.Select(place => ShearAt(name, most, place)).MaxBy(force => force.Value?.Newtons)!;

    private Figure<Force> ShearAt(string name, LiftExtreme most, double place) =>
        Sum.Of($"{name}, {Where(most)}, at rest", "v = 9.80665 · |Σ Rᵢ − Σ Wⱼ|", Statics.Equilibrium)
            .PutAll("Rᵢ", PullsLeftOf(most, place).Select(one => one.Pull))
            .PutAll("Wⱼ", WeightsLeftOf(place).Select(one => one.Weight))
            .Gives((pulls, weights) => Force.FromNewtons(TrussStatics.Gravity * Math.Abs(pulls.Values.Sum(mass => mass.Kilograms) - weights.Values.Sum(mass => mass.Kilograms))));

    private List<(double At, Figure<Mass> Pull)> PullsLeftOf(LiftExtreme most, double place)
    {
        var state = study!.Moving.States.First(one => one.Case == most.Case && one.Diagram is not null);
        return [.. truss.Picks.Select((pick, index) => (At: pick.Pick.Along.Value.Meters, Pull: new Figure<Mass>(Mass.FromKilograms(state.Levels[index] < Slack ? 0 : state.Levels[index] / TrussStatics.Gravity), Doubts, Reason.Derived.It))).Where(one => one.At < place)];
    }

    private List<(Figure<Mass> Weight, double Lever)> WeightsLeftOf(double place) =>
    [
        .. from load in loads
           let left = load.LeftOf(place)
           where left.Share > 0
           select (load.Weight.Value is { } mass ? new Figure<Mass>(mass * left.Share, load.Weight.RestsOn, Reason.Derived.It) : load.Weight, left.Lever),
    ];

    private static double Moments(Terms<Mass> masses, Terms<Length> arms) => masses.Values.Zip(arms.Values, (mass, arm) => mass.Kilograms * arm.Meters).Sum();

    private static Figure<Length> LengthOf(double metres) => new(Length.FromMeters(metres), Domain.Facts.Doubts.None, Reason.Derived.It);

    private static Words Where(LiftExtreme? most) => most is null ? "" : WhereAt(most.At, most.Case);

    private static Words WhereAt(double at, LiftCase lift) => Words.Of($"at {Length.FromMeters(at)}, {lift.Said}");
}
