using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out one truss: what each pick carries level, uneven and at worst, and how it bends.</summary>
internal sealed class TrussStatics
{
    /// <summary>What a kilogram weighs, N: standard gravity.</summary>
    internal const double Gravity = 9.80665;

    private static readonly Figure<Mass> Unknown = new(null, Doubts.None, Reason.Derived.It);

    private readonly Brief brief;
    private readonly PlacedTruss truss;
    private readonly IReadOnlyList<CarriedLoad> loads;
    private readonly IReadOnlyList<CarriedLoad> pushes;
    private readonly TrussCapacity capacity;
    private readonly PickParts parts;
    private readonly Doubts where;

    /// <param name="brief">As written.</param>
    /// <param name="truss">Where it hangs.</param>
    /// <param name="bridles">All of them.</param>
    /// <param name="loads">What it carries.</param>
    /// <param name="pushes">What pushes it sideways.</param>
    public TrussStatics(Brief brief, PlacedTruss truss, IReadOnlyList<PlacedBridle> bridles, IReadOnlyList<CarriedLoad> loads, IReadOnlyList<CarriedLoad> pushes)
    {
        (this.brief, this.truss, this.loads, this.pushes) = (brief, truss, loads, pushes);
        capacity = new TrussCapacity(truss, brief.Company.Policies.Rigging);
        parts = new PickParts(brief, truss.Name, truss.Picks, truss.Truss.Below, bridles);
        var stiff = truss.Picks.Count > 2 ? parts.StiffnessRestsOn(truss.Kind) : Doubts.None;
        where = loads.Aggregate(truss.AlongRestsOn.With(stiff), (sum, load) => sum.With(load.Where));
    }

    /// <summary>The truss, worked out.</summary>
    public TrussPlan Plan()
    {
        var weight = Sum.Of($"{truss.Name}, all that hangs", "W = Σ Wⱼ", Publication.Arithmetic)
            .PutAll("Wⱼ", loads.Select(load => load.Weight))
            .Gives(terms => Mass.FromKilograms(terms.Values.Sum(one => one.Kilograms)));
        var (centre, offset) = (Middle("xⱼ", load => load.Middle, "centre of gravity along it"), Middle("yⱼ", load => load.Offset, "centre of gravity off its centre line"));
        var hung = Hung();
        var uneven = parts.UnevenMoving();
        var limits = Capacities(hung);
        var study = hung is null ? null : LiftStudy.Of(hung, parts.Uneven.Meters, uneven.Value!.Value.Meters, limits);
        var forces = new TrussForces(truss, loads, study, capacity, parts.Dynamic, where);
        var across = new SidewaysStatics(truss, study, pushes, capacity, brief.Company.Policies.Rigging.OffPlumb);
        List<PickPlan> picks = [.. truss.Picks.Select((pick, index) => PickOf(pick, index, weight, centre, study) with { Pushed = across.On(pick, index) })];
        return new TrussPlan(truss, loads, weight, centre, offset, study, picks)
        {
            Sideways = across.Of(picks, forces.Together),
            IsInside = hung?.IsInside,
            Sagging = forces.Sagging,
            Hogging = forces.Hogging,
            Shear = forces.Shear,
            Together = forces.Together,
            BoundUse = study?.Bound.Use,
            GoneUse = study?.Gone.Use,
            Tolerances = hung is not null && limits is not null ? LiftTolerance.Of(hung, limits) : [],
            UnevenMoving = uneven,
            Sag = SagOf(study, weight),
            Span = SpanOf(),
        };
    }

    // Only where its maker says how stiff it is: on two picks the forces are known without, how it bends is not.
    private Figure<Length> SagOf(LiftStudy? study, Figure<Mass> weight)
    {
        var low = truss.Kind?.Truss?.Bending is { IsKnown: true } && study?.Rigid.Solution is { } solved ? Math.Max(0, -solved.Lowest.Value) : (double?)null;
        return new Figure<Length>(low is { } far ? Length.FromMeters(far) : null, weight.RestsOn.With(where).With(Doubts.Of(truss.Kind?.Truss?.Bending?.Doubt)), Reason.Derived.It);
    }

    private Length? SpanOf()
    {
        if (!truss.Truss.Length.Is(out var length) || truss.Picks.Count == 0 || truss.Picks.Any(pick => !pick.Pick.Along.IsKnown))
        {
            return null;
        }

        var at = truss.Picks.Select(pick => pick.Pick.Along.Value.Meters).ToList();
        return Length.FromMeters(at.Zip(at.Skip(1), (left, right) => right - left).Append(2 * at[0]).Append(2 * (length.Meters - at[^1])).Max());
    }

    private Figure<Length> Middle(string symbol, Func<CarriedLoad, double?> of, string name) =>
        Sum.Of($"{truss.Name}, {name}", $"x = Σ Wⱼ · {symbol} / Σ Wⱼ", Statics.Equilibrium)
            .PutAll("Wⱼ", loads.Select(load => load.Weight))
            .PutAll(symbol, loads.Select(load => new Figure<Length>(of(load) is { } at ? Length.FromMeters(at) : null, load.Where, Reason.Derived.It)))
            .Gives((weights, places) => Length.FromMeters(weights.Values.Zip(places.Values, (one, at) => one.Kilograms * at.Meters).Sum() / weights.Values.Sum(one => one.Kilograms)));

    // On two picks how stiff it is does not matter; on more nobody can say without.
    private HungBeam? Hung()
    {
        if (!truss.Truss.Length.Is(out var length) || truss.Picks.Count == 0 || truss.Picks.Any(pick => !pick.Pick.Along.IsKnown) || loads.Any(load => load.Weight.Value is null || load.From is null))
        {
            return null;
        }

        var places = truss.Picks.Select(pick => pick.Pick.Along.Value.Meters).ToList();
        var isRising = places.Zip(places.Skip(1)).All(pair => pair.Second - pair.First >= HungBeam.LeastApart) && places[0] >= 0 && places[^1] <= length.Meters;
        var bending = truss.Kind?.Truss?.Bending is { IsKnown: true } said ? said.Value.NewtonSquareMetres : truss.Picks.Count <= 2 ? 1e6 : (double?)null;
        var shearing = truss.Kind?.Truss?.ShearStiffness is { IsKnown: true } given ? given.Value.Newtons : (double?)null;
        return !isRising || bending is null || loads.Sum(load => load.Weight.Value!.Value.Kilograms) <= 0 || !loads.All(load => load.IsWithin(length.Meters)) ? null : new HungBeam(
            length.Meters,
            bending.Value,
            shearing,
            [.. loads.Where(load => load.To is not null).Select(load => new HungWeight(load.From!.Value, load.To!.Value, load.Weight.Value!.Value.Kilograms * Gravity / (load.To.Value - load.From.Value)))],
            [.. loads.Where(load => load.To is null).Select(load => new HungLoad(load.From!.Value, load.Weight.Value!.Value.Kilograms * Gravity, load.Offset))],
            [.. truss.Picks.Select(pick => new HungHoist(pick.Pick.Along.Value.Meters, parts.StiffnessOf(pick)) { BodyAtTruss = !pick.Pick.BodyUp })]);
    }

    private LiftCapacities? Capacities(HungBeam? hung)
    {
        if (hung is null)
        {
            return null;
        }

        var hoists = truss.Picks.Select(pick => parts.Most(pick) is { } most ? most * Gravity : (double?)null).ToList();
        return capacity.Over(hoists, parts.Dynamic);
    }

    private PickPlan PickOf(PlacedPick pick, int index, Figure<Mass> weight, Figure<Length> centre, LiftStudy? study)
    {
        var level = study is null ? Unknown with { RestsOn = weight.RestsOn.With(where) } : LevelOf(pick, index, study);
        var rest = study?.AtRest.Hoists[index].Most;
        var moving = study?.Moving.Hoists[index].Most;
        var atRest = Raised($"{pick.Name}, most at rest", level, rest);
        var whileMoving = Raised($"{pick.Name}, most while it moves", level, moving);
        var least = new Figure<Mass>(study is null ? null : Mass.FromKilograms(study.AtRest.Hoists[index].Least.Level / Gravity), weight.RestsOn.With(where), Reason.Derived.It);
        var spot = pick.Pick.Along.Is(out var along) ? truss.At(along.Meters) : null;
        return new PickPlan(
            pick,
            spot,
            level,
            atRest,
            rest?.Case.Said,
            whileMoving,
            moving?.Case.Said,
            least,
            BoundOf(pick, weight, centre),
            parts.OnHoist(pick, whileMoving),
            parts.RatingOf(pick),
            parts.OnPoint(pick, atRest),
            parts.OnPointMoving(pick, whileMoving))
        {
            Snag = parts.Snag(pick),
            Lean = parts.LeanOf(pick, pick.Above, spot, SlungAt(pick), truss.Trim.RestsOn.With(truss.RestsOn), parts.OnPoint(pick, atRest)),
            Parts = new PartUses(brief).Straight(pick.AllGear, pick.Pick.Hitch, parts.IsOver, parts.OnPoint(pick, atRest), parts.OnPointMoving(pick, whileMoving)),
            HoistAtRest = parts.OnHoistAtRest(pick, atRest),
            RatingAtRest = parts.RatingAtRestOf(pick),
        };
    }

    // Where its slings are; where nobody says, at the upper chord.
    private Figure<Length> SlungAt(PlacedPick pick)
    {
        if (pick.Pick.Holds is { IsKnown: true, Value: HeldChords.Lower } lower)
        {
            return truss.Trim with { RestsOn = truss.Trim.RestsOn.With(Doubts.Of(lower.Doubt)) };
        }

        var depth = truss.Kind?.Size is { IsKnown: true, Value.Height: { } high } ? high : Length.Zero;
        return Sum.Of($"{truss.Name}, its upper chord", "z = t + d", Publication.Arithmetic).Put("t", truss.Trim).Put("d", new Figure<Length>(depth, Doubts.None, Reason.Derived.It)).Gives((low, deep) => low + deep);
    }

    // Each load times the share of it that comes here; the shares are those of each load alone on the chains that pull.
    private Figure<Mass> LevelOf(PlacedPick pick, int index, LiftStudy study)
    {
        var state = study.Level.Hoists[index].Most.Case.IsSoft ? study.Soft! : study.Rigid;
        return Sum.Of($"{pick.Name}, carries, {state.Case.Name}", "R = Σ Wⱼ · cⱼ", Statics.ShearFlexibleBeam)
            .PutAll("Wⱼ", loads.Select(load => load.Weight))
            .PutAll("cⱼ", new LoadShares(study.Hung, state).Of(index, loads).Select(share => new Figure<double>(share, where, Reason.Derived.It)))
            .Gives((weights, shares) => Mass.FromKilograms(weights.Values.Zip(shares.Values, (one, share) => one.Kilograms * share).Sum()));
    }

    private static Figure<Mass> Raised(string name, Figure<Mass> level, HoistExtreme? most) =>
        Sum.Of(most is null ? name : $"{name}, {most.Case.Name}", "R = R₀ + ΔR", Statics.ShearFlexibleBeam)
            .Put("R₀", level)
            .Put("ΔR", new Figure<Mass>(most is null || level.Value is null ? null : Mass.FromKilograms(Plain((most.Level / Gravity) - level.Value.Value.Kilograms)), level.RestsOn, Reason.Derived.It))
            .Gives((flat, more) => flat + more);

    // What is left of a subtraction of like numbers is nothing.
    private static double Plain(double difference) => Math.Abs(difference) < 1e-6 ? 0 : difference;

    // No stiffness enters it. The far one is the outermost pick beyond the centre of gravity.
    private Figure<Mass> BoundOf(PlacedPick pick, Figure<Mass> weight, Figure<Length> centre)
    {
        var places = truss.Picks.Where(one => one.Pick.Along.IsKnown).Select(one => one.Pick.Along.Value.Meters).ToList();
        if (!pick.Pick.Along.Is(out var own) || centre.Value is not { } middle || places.Count != truss.Picks.Count)
        {
            return Unknown with { RestsOn = weight.RestsOn.With(where) };
        }

        var far = own.Meters < middle.Meters ? places[^1] : places[0];
        var isUnder = far == own.Meters || own.Meters == middle.Meters;
        return isUnder || Math.Abs(far - middle.Meters) >= Math.Abs(far - own.Meters)
            ? Sum.Of($"{pick.Name}, most however uneven", "R = W", Statics.Equilibrium).Put("W", weight with { RestsOn = weight.RestsOn.With(where) }).Gives(all => all)
            : Sum.Of($"{pick.Name}, most however uneven", "R = W · |xf − x| / |xf − xᵢ|", Statics.Equilibrium)
                .Put("W", weight)
                .Put("xf", Of(far))
                .Put("x", centre)
                .Put("xᵢ", Of(own.Meters))
                .Gives((all, end, at, here) => all * (Math.Abs(end.Meters - at.Meters) / Math.Abs(end.Meters - here.Meters)));
    }

    private Figure<Length> Of(double metres) => new(Length.FromMeters(metres), where, Reason.Derived.It);
}
