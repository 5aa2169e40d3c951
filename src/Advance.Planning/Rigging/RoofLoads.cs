using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Adds up what hangs on each point and each beam of the roof.</summary>
internal sealed class RoofLoads(Brief brief, Ground ground, IReadOnlyList<PickPlan> hung, IReadOnlyList<BridlePlan> bridles)
{
    private static readonly Figure<Mass> None = new(Mass.Zero, Doubts.None, Reason.Derived.It);

    private IReadOnlyList<RoofPoint> Known => brief.Venue.RoofPoints.Is(out var points) ? points : [];

    /// <summary>Each point that something hangs on.</summary>
    public IReadOnlyList<PointPlan> Points() => [.. Known.Select(PointOf).Where(point => point.Hangs.Count > 0)];

    /// <summary>Each other one, with where it is.</summary>
    public IReadOnlyList<(RoofPoint Point, Spot? Spot)> Unused() => [.. Known.Where(point => PointOf(point).Hangs.Count == 0).Select(point => (point, ground.Find(point.Place)))];

    /// <summary>Each beam that such a point is on.</summary>
    public static IReadOnlyList<BeamPlan> Beams(Venue venue, IReadOnlyList<PointPlan> points) =>
    [
        .. venue.RoofBeams.Select(beam => (Beam: beam, On: points.Where(point => point.Point.Beam is { IsKnown: true } name && string.Equals(name.Value, beam.Name, StringComparison.OrdinalIgnoreCase)).ToList()))
            .Where(one => one.On.Count > 0)
            .Select(one => BeamOf(one.Beam, one.On)),
    ];

    private PointPlan PointOf(RoofPoint point)
    {
        var picks = hung.Where(pick => pick.Placed.Pick.Point.Is(out var name) && IsIt(name, point)).ToList();
        var legs = bridles.Where(bridle => bridle.Bridle.Points.Any(name => IsIt(name, point)))
            .Select(bridle => (Bridle: bridle, Leg: bridle.Legs.FirstOrDefault(leg => IsIt(leg.Point, point)))).ToList();
        var rest = BridleStatics.Total($"{point.Name}, at rest", [.. picks.Select(pick => pick.PointAtRest), .. legs.SelectMany(one => one.Leg is { } leg ? new[] { leg.Down, leg.Own } : [None with { Value = null }])]);
        var moving = BridleStatics.Total($"{point.Name}, while it moves", [.. picks.Select(pick => pick.PointMoving), .. legs.Select(one => Moving(one.Leg)), .. legs.Where(one => one.Leg is not null).Select(one => one.Leg!.Own)]);
        var across = new PointSideways(point, brief.Company.Policies.Rigging.OffPlumb, picks, legs);
        return new PointPlan(
            point,
            [.. picks.Select(pick => pick.Name), .. legs.Select(one => $"bridle {one.Bridle.Name}")],
            rest,
            moving,
            across.Pull,
            across.Bearing,
            Figure.From(point.Limit))
        {
            At = picks.Select(pick => pick.Placed.Pick.At).Concat(legs.Select(one => one.Bridle.Bridle.At)).FirstOrDefault(point.At),
            Spot = ground.Find(point.Place),
            Pushed = across.Pushed,
            SidewaysMost = across.Most,
            SidewaysLimit = across.LimitUnder(rest),
            Across = across.Across,
            AcrossLimit = across.AcrossLimitUnder(rest),
            Snag = Snag(point, rest, picks, legs),
        };
    }

    // One catches at a time; all else hangs on, at rest. The worst of them counts.
    private static Figure<Mass>? Snag(RoofPoint point, Figure<Mass> rest, List<PickPlan> picks, List<(BridlePlan Bridle, BridleLegPlan? Leg)> legs)
    {
        if (picks.Count == 1 && legs.Count == 0)
        {
            return picks[0].Snag;
        }

        var straight = picks.Where(pick => pick.Snag is not null).Select(pick => Caught(point, rest, pick.PointAtRest, pick.Snag!));
        var bridled = legs.Where(one => one.Leg is not null).SelectMany(one => one.Bridle.On.Where(pick => pick.Snag is not null).Select(pick => Caught(point, rest, Part(one.Leg!, pick.PointAtRest), Part(one.Leg!, pick.Snag!))));
        return straight.Concat(bridled).MaxBy(figure => figure.Value?.Kilograms ?? double.MaxValue);
    }

    private static Figure<Mass> Caught(RoofPoint point, Figure<Mass> rest, Figure<Mass> own, Figure<Mass> caught) =>
        Sum.Of($"{point.Name}, when a load catches", "F = F₀ − R + S", RiggingStandards.En14492).Put("F₀", rest).Put("R", own).Put("S", caught).Gives((all, less, more) => all - less + more);

    private static Figure<Mass> Part(BridleLegPlan leg, Figure<Mass> whole) =>
        Sum.Of($"leg to {leg.Point}, straight down", "V = F · c", Statics.Bridles).Put("F", whole).Put("c", leg.Share).Gives((all, share) => all * share);

    private static Figure<Mass> Moving(BridleLegPlan? leg) => leg is null ? None with { Value = null }
        : Sum.Of($"leg to {leg.Point}, straight down, moving", "V = T · sin α", Statics.Bridles)
            .Put("T", leg.Pull)
            .Put("α", new Figure<Angle>(Angle.FromDegrees(leg.FromHorizontal), Doubts.None, Reason.Derived.It))
            .Gives((pull, angle) => pull * Math.Sin(angle.Radians));

    private static bool IsIt(string name, RoofPoint point) => string.Equals(name, point.Name, StringComparison.OrdinalIgnoreCase);

    private static BeamPlan BeamOf(RoofBeam beam, List<PointPlan> points)
    {
        var loads = points.Select(point => (At: point.Point.Along is { } given ? Figure.From(given) : new Figure<Length>(null, Doubts.None, Reason.Derived.It), Load: point.AtRest))
            .Concat(beam.Others.Select(other => (At: Figure.From(other.Along), Load: Figure.From(other.Weight))))
            .ToList();
        var left = EndOf($"{beam.Name}, on its first end", beam, loads, isFirst: true);
        var right = EndOf($"{beam.Name}, on its other end", beam, loads, isFirst: false);
        var isFirstMore = left.Value is { } one && right.Value is { } other && one.Newtons > other.Newtons;
        return new BeamPlan(beam, MomentOf(beam, loads, left), Allowed(beam), isFirstMore ? left : right, beam.Shear is { } shear ? Figure.From(shear) : new Figure<Force>(null, Doubts.None, Reason.Derived.It))
        {
            At = points[0].At,
            Used = loads.Count,
            Along = loads.TrueForAll(load => load.At.Value is not null) ? [.. loads.Select(load => load.At.Value!.Value.Meters).Order()] : null,
            All = BridleStatics.Total($"{beam.Name}, all that hangs on it", loads.Select(load => load.Load)),
        };
    }

    private static Figure<Force> EndOf(string name, RoofBeam beam, List<(Figure<Length> At, Figure<Mass> Load)> loads, bool isFirst) =>
        Sum.Of(name, isFirst ? "V = 9.80665 · (Σ Fᵢ − Σ Fᵢ · xᵢ / L)" : "V = 9.80665 · Σ Fᵢ · xᵢ / L", Statics.Equilibrium)
            .PutAll("Fᵢ", loads.Select(load => load.Load))
            .PutAll("xᵢ", loads.Select(load => load.At))
            .Put("L", Figure.From(beam.Span))
            .Gives((masses, places, span) => Force.FromNewtons(TrussStatics.Gravity * (isFirst ? masses.Values.Sum(mass => mass.Kilograms) : 0)
                + ((isFirst ? -1 : 1) * TrussStatics.Gravity * masses.Values.Zip(places.Values, (mass, at) => mass.Kilograms * at.Meters).Sum() / span.Meters)));

    // Point loads on two ends: the largest moment is under one of them.
    private static Figure<Torque> MomentOf(RoofBeam beam, List<(Figure<Length> At, Figure<Mass> Load)> loads, Figure<Force> first)
    {
        if (first.Value is not { } end)
        {
            return new Figure<Torque>(null, first.RestsOn, Reason.Derived.It);
        }

        double At(double place) => (end.Newtons * place) - loads.Where(load => load.At.Value!.Value.Meters < place).Sum(load => TrussStatics.Gravity * load.Load.Value!.Value.Kilograms * (place - load.At.Value!.Value.Meters));
        var where = loads.MaxBy(load => At(load.At.Value!.Value.Meters)).At.Value!.Value;
        var before = loads.Where(load => load.At.Value!.Value.Meters < where.Meters).ToList();
        return Sum.Of($"{beam.Name}, moment", "M = V · x − 9.80665 · Σ Fᵢ · aᵢ", Statics.Equilibrium)
            .Put("V", first)
            .Put("x", new Figure<Length>(where, Doubts.None, Reason.Derived.It))
            .PutAll("Fᵢ", before.Select(load => load.Load))
            .PutAll("aᵢ", before.Select(load => new Figure<Length>(where - load.At.Value!.Value, Doubts.None, Reason.Derived.It)))
            .Gives((force, place, masses, arms) => Torque.FromNewtonMeters((force.Newtons * place.Meters) - (TrussStatics.Gravity * masses.Values.Zip(arms.Values, (mass, arm) => mass.Kilograms * arm.Meters).Sum())));
    }

    // What its middle may carry, or spread evenly, only says what it bears where it rests on two ends.
    private static Figure<Torque> Allowed(RoofBeam beam)
    {
        if (beam.Moment is { } moment)
        {
            return Figure.From(moment);
        }

        var isCentre = beam.Centre is not null;
        return !beam.IsSimple || (beam.Centre ?? beam.Uniform) is not { } load ? new Figure<Torque>(null, Doubts.None, Reason.Derived.It)
            : Sum.Of($"{beam.Name}, moment allowed", $"Ma = 9.80665 · P · L / {(isCentre ? 4 : 8)}", Statics.Equilibrium)
                .Put("P", Figure.From(load))
                .Put("L", Figure.From(beam.Span))
                .Gives((mass, span) => Torque.FromNewtonMeters(TrussStatics.Gravity * mass.Kilograms * span.Meters / (isCentre ? 4 : 8)));
    }
}
