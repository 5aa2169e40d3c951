using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What holds a truss or a hang at its picks: how stiff, how heavy, how much it bears.</summary>
internal sealed class PickParts(Brief brief, string name, IReadOnlyList<PlacedPick> picks, Given<PeopleBelow>? below)
{
    private static readonly Figure<Mass> Unknown = new(null, Doubts.None, Reason.Derived.It);

    private RiggingPolicies Policies => brief.Company.Policies.Rigging;

    /// <summary>What starting and stopping adds, as a factor.</summary>
    public double Dynamic => Policies.DynamicFactor;

    /// <summary>How far a hook may be off level at rest: as the company says, or half a link where that is more.</summary>
    public Length Uneven => Hoists.Select(hoist => hoist.Link).Where(link => link is { IsKnown: true }).Select(link => link!.Value.Value / 2).Append(Policies.Uneven).Max();

    private IEnumerable<Hoist> Hoists => picks.Select(pick => pick.Hoist?.Kind?.Hoist).OfType<Hoist>();

    /// <summary>While it moves: one starts later, and runs at another speed until they are levelled again. What hangs dead does not move.</summary>
    public Figure<Length> UnevenMoving()
    {
        var speed = Hoists.Select(hoist => hoist.Speed is { IsKnown: true } said ? said.Value : Policies.HoistSpeed).DefaultIfEmpty(Speed.Zero).Max();
        var drift = Sum.Of($"{name}, how far its hoists part", "d = e · s / 100", Publication.CommonPractice)
            .Put("e", Figure.Policy("speed-spread", Policies.SpeedSpread))
            .Put("s", Figure.Policy("level-every", picks.Any(pick => pick.Hoist is not null) ? Policies.LevelEvery : Length.Zero))
            .Gives((share, travel) => travel * (share / 100));
        return Sum.Of($"{name}, how uneven while it moves", "δ = δ₀ + v · t + d", Publication.CommonPractice)
            .Put("δ₀", Figure.Policy("uneven", Uneven))
            .Put("v", new Figure<Speed>(speed, Doubts.None, Reason.Derived.It))
            .Put("t", Figure.Policy("start-lag", Policies.StartLag))
            .Put("d", drift)
            .Gives((rest, fast, lag, parted) => Length.FromMeters(rest.Meters + (fast.MetersPerSecond * lag.Seconds) + parted.Meters));
    }

    /// <summary>Of slings, steels and point one after the other, N/m; null where nobody knows of any that gives.</summary>
    public double? StiffnessOf(PlacedPick pick)
    {
        var gear = pick.Gear.Select(piece => piece.Kind?.Lifting).OfType<LiftingGear>()
            .Where(part => part.Stretch is { IsKnown: true } && part.Length is { IsKnown: true } && part.Rating.IsKnown && part.Stretch.Value.Value.DecimalFractions > 0)
            .Select(part => part.Stretch!.Value.Value.DecimalFractions * part.Length!.Value.Value.Meters / (part.Rating.Value.Kilograms * TrussStatics.Gravity));
        var point = PointOf(pick)?.Stiffness is { IsKnown: true } stiff ? [1 / stiff.Value.NewtonsPerMeter] : Array.Empty<double>();
        var flexibility = gear.Concat(point).Sum();
        return flexibility > 0 ? 1 / flexibility : null;
    }

    /// <summary>The venue's point; null for a bridle, and where nobody knows it.</summary>
    public RoofPoint? PointOf(PlacedPick pick) => pick.Pick.Point.Is(out var name) && brief.Venue.RoofPoints.Is(out var points)
        ? points.FirstOrDefault(point => string.Equals(point.Name, name, StringComparison.OrdinalIgnoreCase))
        : null;

    /// <summary>On the hoist while it moves: all below its hook. Where its body is at the truss, it lifts itself.</summary>
    public Figure<Mass> OnHoist(PlacedPick pick, Figure<Mass> carries) => Moved($"{pick.Name}, on its hoist, moving", carries, BelowHook(pick));

    /// <summary>On what it hangs on, at rest.</summary>
    public Figure<Mass> OnPoint(PlacedPick pick, Figure<Mass> carries) =>
        Sum.Of($"{pick.Name}, on its point, at rest", "F = R + m", Publication.Arithmetic).Put("R", carries).Put("m", All(pick)).Gives((pull, own) => pull + own);

    /// <summary>The same while it moves.</summary>
    public Figure<Mass> OnPointMoving(PlacedPick pick, Figure<Mass> carries) => Moved($"{pick.Name}, on its point, moving", carries, All(pick));

    /// <summary>The same at rest.</summary>
    public Figure<Mass> OnHoistAtRest(PlacedPick pick, Figure<Mass> carries) =>
        Sum.Of($"{pick.Name}, on its hoist, at rest", "F = R + m", Publication.Arithmetic).Put("R", carries).Put("m", BelowHook(pick)).Gives((pull, own) => pull + own);

    /// <summary>What the hoist may bear while it moves, by who is below then; what hangs dead has none to ask.</summary>
    public Figure<Mass> RatingOf(PlacedPick pick) => pick.Hoist?.Kind?.Hoist is not { } hoist ? Unknown
        : below is { IsKnown: true, Value: PeopleBelow.Moving } ? Of(hoist.Moves) : Figure.From(hoist.Lifts);

    /// <summary>What it may bear at rest. Where nobody says that the area is clear, somebody is below.</summary>
    public Figure<Mass> RatingAtRestOf(PlacedPick pick) => pick.Hoist?.Kind?.Hoist is not { } hoist ? Unknown
        : below is { IsKnown: true, Value: PeopleBelow.Never } ? Figure.From(hoist.Lifts) : Of(hoist.Holds);

    /// <summary>The most that a pick may carry, kg, so that hoist and point bear it; null where either is unknown.</summary>
    public double? Most(PlacedPick pick)
    {
        var hoist = pick.Hoist is null ? double.MaxValue
            : RatingOf(pick).Value is { } rating && RatingAtRestOf(pick).Value is { } holds && BelowHook(pick).Value is { } below
                ? Math.Min(rating.Kilograms / Dynamic, holds.Kilograms) - below.Kilograms
                : (double?)null;
        var point = PointOf(pick) is not { } bearing || !bearing.Limit.Is(out var limit) || All(pick).Value is not { } own ? (double?)null
            : (bearing.IsForMoving ? limit.Kilograms / Dynamic : limit.Kilograms) - own.Kilograms;
        return hoist is { } one && point is { } other && Math.Min(one, other) > 0 ? Math.Min(one, other) : null;
    }

    private static Figure<Mass> Of(Given<Mass>? rating) => rating is { } given ? Figure.From(given) : Unknown;

    private Figure<Mass> Moved(string name, Figure<Mass> carries, Figure<Mass> own) =>
        Sum.Of(name, "Q = φ · (R + m)", Publication.CommonPractice)
            .Put("φ", Figure.Policy("dynamic-factor", Dynamic))
            .Put("R", carries)
            .Put("m", own)
            .Gives((factor, pull, mass) => factor * (pull + mass));

    private Figure<Mass> BelowHook(PlacedPick pick) =>
        StackFigures.Weight(pick.Pick.BodyUp || pick.Hoist is null ? pick.Gear : [pick.Hoist, .. pick.Gear], brief.Company.Policies.WeightMargin, $"{pick.Name}, below its hook");

    private Figure<Mass> All(PlacedPick pick) =>
        StackFigures.Weight(pick.Hoist is { } hoist ? [hoist, .. pick.Gear] : pick.Gear, brief.Company.Policies.WeightMargin, $"{pick.Name}, hoist, chain and gear");
}
