using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What the picks of a hang carry: level, with hooks a little off, and while it moves.</summary>
internal sealed class HangPicks
{
    private static readonly Figure<Mass> NoMass = new(null, Doubts.None, Reason.Derived.It);

    private readonly Brief brief;
    private readonly Ground ground;
    private readonly HangPlan plan;
    private readonly HangFacts facts;
    private readonly HangHolding holding;
    private readonly HangReach reach;
    private readonly PickParts parts;
    private readonly Figure<Mass> carried;

    /// <param name="brief">For points and policies.</param>
    /// <param name="ground">For places.</param>
    /// <param name="plan">The hang, as it tilts.</param>
    /// <param name="facts">What is known of it.</param>
    /// <param name="holding">By which holes it is held.</param>
    /// <param name="reach">How high its holes are.</param>
    /// <param name="bridles">All of them.</param>
    public HangPicks(Brief brief, Ground ground, HangPlan plan, HangFacts facts, HangHolding holding, HangReach reach, IReadOnlyList<PlacedBridle> bridles)
    {
        (this.brief, this.ground, this.plan, this.facts, this.holding, this.reach) = (brief, ground, plan, facts, holding, reach);
        parts = new PickParts(brief, plan.Name, plan.Placed.Picks, plan.Placed.Flown.Below, bridles);
        Uneven = plan.Placed.Picks.Count == 2 ? parts.UnevenMoving() : null;
        carried = holding.Pull is { } pull ? pull.Carried : plan.Weight;
    }

    // Front and rear pick, where there are two that can share it.
    private (int Front, int Rear)? Pair => plan.State is not null && plan.Placed.Picks.Count == 2 && reach.Front is { } front ? (front, 1 - front) : null;

    /// <summary>How far its hooks are reckoned off level while it moves; null where they are not two.</summary>
    public Figure<Length>? Uneven { get; }

    /// <summary>In the order written.</summary>
    public IReadOnlyList<HangPickPlan> All()
    {
        var front = Pair is { } pair && plan.State is { } state ? Share(state, pair) : null;
        return [.. plan.Placed.Picks.Select((pick, index) => PickOf(pick, index, LevelOf(pick, index, front)))];
    }

    /// <summary>The least and the most tilt at which each of two picks carries the share that it should.</summary>
    public (Figure<Angle> Least, Figure<Angle> Most) Tilts()
    {
        var unknown = new Figure<Angle>(null, facts.Doubts, Reason.Derived.It);
        if (Pair is not { } pair || plan.Chain is not { } chain)
        {
            return (unknown, unknown);
        }

        var (front, rear) = (PickHole.Of(holding.Used[pair.Front]!), PickHole.Of(holding.Used[pair.Rear]!));
        var least = brief.Company.Policies.Rigging.LeastPick / 100;
        Figure<Angle> On(double share, string which)
        {
            var between = new PickHole(rear.Forward + (share * (front.Forward - rear.Forward)), rear.Up + (share * (front.Up - rear.Up)));
            return holding.Pull is not null || chain.FreeTilt(between) is not null ? Shared($"{plan.Name}, {which} tilt at which both picks carry", between, chain) : unknown;
        }

        return (On(1 - least, "least"), On(least, "most"));
    }

    // Where each has its share, all of it hangs below a place between the two holes.
    private Figure<Angle> Shared(string said, PickHole between, HungChain chain)
    {
        var level = chain.At(Angle.Zero).Centre;
        Figure<Length> Heavy(double metres) => facts.At(metres) with { RestsOn = facts.Doubts.With(plan.Weight.RestsOn) };
        var (place, centre) = ((Ahead: facts.At(between.Forward), Up: facts.At(between.Up)), (Ahead: Heavy(level.X), Up: Heavy(level.Z)));
        return holding.Pull?.FreeTilt(chain, said, between, place, centre) ?? Sum.Of(said, "a = atan((x − p) / (u − z))", Statics.Equilibrium)
            .Put("x", centre.Ahead)
            .Put("p", place.Ahead)
            .Put("u", place.Up)
            .Put("z", centre.Up)
            .Gives((at, pick, high, low) => Angle.FromRadians(Math.Atan((at.Meters - pick.Meters) / (high.Meters - low.Meters))));
    }

    // R_front = W (x − x_rear) / (x_front − x_rear).
    private Figure<Mass>? Share(HangState state, (int Front, int Rear) pair)
    {
        var (front, rear) = (holding.Used[pair.Front]!, holding.Used[pair.Rear]!);
        var (ahead, behind) = (Along(state, front), Along(state, rear));
        return ahead.Value!.Value <= behind.Value!.Value ? null
            : Sum.Of($"{plan.Placed.Picks[pair.Front].Name}, carries, level", "R = W · (x − r) / (f − r)", Statics.Equilibrium)
                .Put("W", carried)
                .Put("x", holding.Pull is { } pull ? pull.Seeming(plan.Centre, state) : plan.Centre)
                .Put("r", behind)
                .Put("f", ahead)
                .Gives((all, at, back, fore) => all * ((at.Meters - back.Meters) / (fore.Meters - back.Meters)));
    }

    private Figure<Length> Along(HangState state, FrameHole hole)
    {
        var at = state.PlaceOf(PickHole.Of(hole));
        var place = facts.At(at.X) with { RestsOn = facts.Doubts.With(HangHolding.RestsOn(hole)) };
        return holding.Pull is { } pull ? pull.Leaning(place, at.Z) : place;
    }

    private Figure<Mass> LevelOf(PlacedPick pick, int index, Figure<Mass>? front)
    {
        if (plan.State is null)
        {
            return NoMass with { RestsOn = plan.Weight.RestsOn };
        }

        if (plan.Placed.Picks.Count == 1)
        {
            return Sum.Of($"{pick.Name}, carries", "R = W", Statics.Equilibrium).Put("W", carried).Gives(all => all);
        }

        return front is null ? NoMass with { RestsOn = plan.RestsOn }
            : index == Pair!.Value.Front ? front
            : Sum.Of($"{pick.Name}, carries, level", "R = W − F", Statics.Equilibrium).Put("W", carried).Put("F", front).Gives((all, other) => all - other);
    }

    private HangPickPlan PickOf(PlacedPick pick, int index, Figure<Mass> level)
    {
        var (still, lifted) = (Offset(index, parts.Uneven), Offset(index, Uneven?.Value ?? Length.Zero));
        var (rest, moving) = (Raised($"{pick.Name}, most at rest, {still.Case}", level, still.Most), Raised($"{pick.Name}, most while it moves, {lifted.Case}", level, lifted.Most));
        var spot = SpotOf(index);
        var (height, onPoint) = (reach.HeightOf(index), parts.OnPoint(pick, rest));
        var lean = parts.LeanOf(pick, PointOver(pick), spot, height, WhereRestsOn, onPoint);
        var made = new PickPlan(
            pick,
            spot,
            level,
            rest,
            still.Case,
            moving,
            lifted.Case,
            new Figure<Mass>(still.Least is { } least ? Mass.FromKilograms(least) : null, level.RestsOn, Reason.Derived.It),
            level.Value is null ? NoMass with { RestsOn = level.RestsOn } : Sum.Of($"{pick.Name}, most however uneven", "R = W", Statics.Equilibrium).Put("W", plan.Weight.Value < carried.Value ? carried : plan.Weight).Gives(all => all),
            parts.OnHoist(pick, moving),
            parts.RatingOf(pick),
            onPoint,
            parts.OnPointMoving(pick, moving))
        {
            Lean = lean,
            PulledBack = PulledBack(pick, level),
            Snag = parts.Snag(pick),
            Parts = new PartUses(brief).Straight(pick.AllGear, pick.Pick.Hitch, parts.IsOver, onPoint, parts.OnPointMoving(pick, moving)),
            HoistAtRest = parts.OnHoistAtRest(pick, rest),
            RatingAtRest = parts.RatingAtRestOf(pick),
        };
        return new HangPickPlan(made, holding.Used[index], plan.Placed.Written(index).Hole is null, height) { OffPlumb = OffPlumb(pick, spot, height, lean) };
    }

    private string CaseOf(int index) => Pair is { } pair ? (index == pair.Front ? "front high" : "rear high") : "level";

    // It goes up before it is pulled back, and then the picks carry all of it, as it tilts then.
    private (double? Least, double? Most, Words Case) Offset(int index, Length off)
    {
        if (plan.State is not { } state)
        {
            return (null, null, CaseOf(index));
        }

        var hangs = Range(index, off, state.Tilt, carried, holding.Pull);
        if (holding.Pull is null)
        {
            return (hangs.Least, hangs.Most, CaseOf(index));
        }

        var before = holding.LooseTilt is { } loose ? Range(index, off, loose, plan.Weight, pull: null) : (null, null);
        return before.Most < hangs.Most ? (hangs.Least, hangs.Most, CaseOf(index)) : (hangs.Least, before.Most, Pair is null ? "before it is pulled back" : $"{CaseOf(index)}, before it is pulled back");
    }

    // A hook that is high tilts the frame, and the frame shifts the load; however far it is off, all of it at most comes on one.
    private (double? Least, double? Most) Range(int index, Length off, Angle tilt, Figure<Mass> all, HangPull? pull)
    {
        var whole = all.Value?.Kilograms;
        if (Pair is not { } pair)
        {
            return (whole, whole);
        }

        var (front, rear) = (PickHole.Of(holding.Used[pair.Front]!), PickHole.Of(holding.Used[pair.Rear]!));
        var turned = Math.Asin(Math.Min(1, off.Meters / Math.Sqrt(Math.Pow(front.Forward - rear.Forward, 2) + Math.Pow(front.Up - rear.Up, 2))));
        var loads = new[] { -turned, 0, turned }.Select(more => plan.Chain!.At(Angle.FromRadians(tilt.Radians + more))).Select(at => pull?.FrontShare(at, front, rear) ?? Share(at, front, rear)).ToList();
        var own = index == pair.Front ? loads : loads.ConvertAll(share => 1 - share);
        return (own.Min() * whole, own.Max() * whole);
    }

    private static double Share(HangState state, PickHole front, PickHole rear)
    {
        var (ahead, behind) = (state.PlaceOf(front).X, state.PlaceOf(rear).X);
        return ahead <= behind ? 1 : Math.Clamp((state.Centre.X - behind) / (ahead - behind), 0, 1);
    }

    private Figure<Mass> Raised(string name, Figure<Mass> level, double? most) =>
        Sum.Of(name, "R = R₀ + ΔR", Statics.Equilibrium)
            .Put("R₀", level)
            .Put("ΔR", new Figure<Mass>(most is null || level.Value is null ? null : Mass.FromKilograms(Math.Max(0, most.Value - level.Value.Value.Kilograms)), facts.Doubts, Reason.Derived.It))
            .Gives((flat, more) => flat + more);

    private Spot? SpotOf(int index) => Pair is not null && plan.State is { } state ? HangSpots.Of(plan.Stack, holding.Used[index]!, holding.Used[1 - index]!, state.Tilt) : plan.Stack.Spot;

    private RiggingPoint? PointOver(PlacedPick pick) =>
        parts.PointOf(pick) is { } point && ground.Find(point.Place) is { } at && point.Height.Is(out var height) ? new RiggingPoint(at.X, at.Y, height.Meters) : null;

    // Along the truss that it hangs on a pick may be anywhere.
    private Figure<Angle>? OffTruss(PlacedPick pick, Spot? hole, Figure<Length> height)
    {
        var truss = pick.Pick.Point.Is(out var name) ? brief.Gig.Rigging.Trusses.FirstOrDefault(one => string.Equals(one.Name, name, StringComparison.OrdinalIgnoreCase)) : null;
        if (truss is null || hole is not { } from || ground.Find(truss.Place) is not { } middle || HangHeights.AboveFloor(truss.Trim, ground) is not { } trim || !(height.Value < trim.Value))
        {
            return null;
        }

        var away = Length.FromMeters(Math.Abs(truss.RunsUpstage ? from.X - middle.X : from.Y - middle.Y));
        return Sum.Of($"{pick.Name}, chain off plumb", "β = atan(d / (H − h))", Publication.Arithmetic)
            .Put("d", new Figure<Length>(away, WhereRestsOn.With(Doubts.Of(truss.Place.Doubt)), Reason.Derived.It)).Put("H", trim).Put("h", height)
            .Gives((side, steel, low) => Angle.FromRadians(Math.Atan2(side.Meters, steel.Meters - low.Meters)));
    }

    private Doubts WhereRestsOn => plan.Stack.RestsOn.With(facts.Doubts);

    private Figure<Angle> OffPlumb(PlacedPick pick, Spot? hole, Figure<Length> height, PickLean? lean)
    {
        var bare = lean?.Lean ?? OffTruss(pick, hole, height) ?? new Figure<Angle>(null, WhereRestsOn, Reason.Derived.It);
        return holding.Pull is not { } pull ? bare
            : Sum.Of($"{pick.Name}, chain off plumb at most, pulled back", "β = d + l", Publication.Arithmetic).Put("d", bare).Put("l", pull.Lean).Gives((side, off) => side + off);
    }

    // To the rear of where it aims.
    private SidewaysPull? PulledBack(PlacedPick pick, Figure<Mass> carries)
    {
        var (sin, cos) = Math.SinCos(plan.Stack.Turn * Math.PI / 180);
        return holding.Pull is not { } pull ? null
            : new SidewaysPull(Sum.Of($"{pick.Name}, pulled back, sideways", "H = R · tan(β)", Statics.Equilibrium).Put("R", carries).Put("β", pull.Lean).Gives((down, lean) => down * Math.Tan(lean.Radians)), sin, cos);
    }
}
