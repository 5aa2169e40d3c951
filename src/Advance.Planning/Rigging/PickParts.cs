using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What holds a truss or a hang at its picks: how stiff, how heavy, how much it bears.</summary>
internal sealed class PickParts(Brief brief, string name, IReadOnlyList<PlacedPick> picks, Given<PeopleBelow>? below, IReadOnlyList<PlacedBridle> bridles)
{
    // Places are sums; what they miss each other by less than, in metres, is no distance.
    private const double Hair = 1e-6;

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
            .Put("v", new Figure<Speed>(speed, UnevenRestsOn, Reason.Derived.It))
            .Put("t", Figure.Policy("start-lag", Policies.StartLag))
            .Put("d", drift)
            .Gives((rest, fast, lag, parted) => Length.FromMeters(rest.Meters + (fast.MetersPerSecond * lag.Seconds) + parted.Meters));
    }

    /// <summary>Of slings, steels and point, or of a bridle, one after the other, N/m; null where nobody knows of any that gives.</summary>
    public double? StiffnessOf(PlacedPick pick)
    {
        var above = BridleOf(pick) is { } bridle ? new BridleBearing(brief, bridle).Flexibility : FlexibilityOf(PointOf(pick));
        var flexibility = pick.AllGear.Sum(FlexibilityOf) + above;
        return flexibility > 0 ? 1 / flexibility : null;
    }

    /// <summary>By how much a part gives for each newton, m; 0 where nobody knows.</summary>
    internal static double FlexibilityOf(Piece piece) => piece.Kind?.Lifting is { Stretch: { IsKnown: true } stretch, Length: { IsKnown: true } length, Rating: { IsKnown: true } rating }
        ? stretch.Value.DecimalFractions * length.Value.Meters / (rating.Value.Kilograms * TrussStatics.Gravity)
        : 0;

    /// <summary>The same of a point of the roof.</summary>
    internal static double FlexibilityOf(RoofPoint? point) => point?.Stiffness is { IsKnown: true } stiff ? 1 / stiff.Value.NewtonsPerMeter : 0;

    private PlacedBridle? BridleOf(PlacedPick pick) => pick.Pick.Point.Is(out var name) ? bridles.FirstOrDefault(bridle => string.Equals(name, bridle.Bridle.Name, StringComparison.OrdinalIgnoreCase)) : null;

    /// <summary>The open questions behind how hooks share what is indeterminate: how stiff truss, slings, bridles and points are, and how uneven it is.</summary>
    /// <param name="truss">Its sections; null where no stock has them.</param>
    public Doubts StiffnessRestsOn(Kind? truss)
    {
        var own = Doubts.Of(truss?.Truss?.Bending?.Doubt).With(Doubts.Of(truss?.Truss?.ShearStiffness?.Doubt)).With(UnevenRestsOn);
        return picks.Aggregate(own, (sum, pick) => pick.AllGear.Select(piece => piece.Kind?.Lifting).OfType<LiftingGear>()
            .Aggregate(sum.With(Doubts.Of(PointOf(pick)?.Stiffness?.Doubt)).With(BridleOf(pick)?.RestsOn ?? Doubts.None), (all, gear) => all.With(Doubts.Of(gear.Stretch?.Doubt)).With(Doubts.Of(gear.Length?.Doubt)).With(Doubts.Of(gear.Rating.Doubt))));
    }

    private Doubts UnevenRestsOn => Hoists.Aggregate(Doubts.None, (sum, hoist) => sum.With(Doubts.Of(hoist.Speed?.Doubt)).With(Doubts.Of(hoist.Link?.Doubt)));

    /// <summary>The venue's point; null for a bridle, and where nobody knows it.</summary>
    public RoofPoint? PointOf(PlacedPick pick) => pick.Pick.Point.Is(out var name) ? brief.Venue.PointNamed(name) : null;

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
        var point = All(pick).Value is not { } own ? null
            : (BridleOf(pick) is { } bridle ? new BridleBearing(brief, bridle).Most(Dynamic) : BridleBearing.Most(PointOf(pick), Dynamic)) - own.Kilograms;
        return hoist is { } one && point is { } other && Math.Min(one, other) > 0 ? Math.Min(one, other) : null;
    }

    /// <summary>On what it hangs on when the load catches and the hoist pulls until its limiter slips; null where it hangs dead.</summary>
    public Figure<Mass>? Snag(PlacedPick pick) => pick.Hoist?.Kind?.Hoist is not { } hoist ? null
        : Sum.Of($"{pick.Name}, on its point when its load catches", "F = φ · Q + m", RiggingStandards.En14492)
            .Put("φ", hoist.Limiter is { } given ? Figure.From(given.Select(slips => slips.DecimalFractions)) : Figure.Policy("limiter", Policies.Limiter))
            .Put("Q", Figure.From(hoist.Lifts))
            .Put("m", All(pick))
            .Gives((factor, rating, own) => (factor * rating) + own);

    /// <summary>How far a pick hangs from straight under its point, or under the hook of its bridle; null where nobody knows, and where that is not above it.</summary>
    /// <param name="pick">Which.</param>
    /// <param name="point">Where its point is; null for one on a bridle, and where nobody knows.</param>
    /// <param name="spot">Where the pick is, seen from above.</param>
    /// <param name="height">And above the floor.</param>
    /// <param name="doubts">About where it is.</param>
    /// <param name="carries">On what it hangs on, at rest.</param>
    public PickLean? LeanOf(PlacedPick pick, RiggingPoint? point, Spot? spot, Figure<Length> height, Doubts doubts, Figure<Mass> carries)
    {
        var bridle = BridleOf(pick);
        if ((point ?? bridle?.Apex) is not { } above || spot is not { } at || height.Value is not { } high || high.Meters >= above.Z)
        {
            return null;
        }

        var where = doubts.With(bridle?.RestsOn ?? Doubts.Of(PointOf(pick)?.Place.Doubt).With(Doubts.Of(PointOf(pick)?.Height.Doubt)));
        var (x, y) = (at.X - above.X, at.Y - above.Y);
        var apart = Math.Sqrt((x * x) + (y * y));
        var aside = apart < Hair ? 0 : apart;
        var off = new Figure<Length>(Length.FromMeters(aside), where, Reason.Derived.It);
        var up = Sum.Of($"{pick.Name}, up to what holds it", "h = H − z", Publication.Arithmetic).Put("H", new Figure<Length>(Length.FromMeters(above.Z), where, Reason.Derived.It)).Put("z", height).Gives((steel, low) => steel - low);
        return new PickLean(
            off,
            up,
            Sum.Of($"{pick.Name}, from the vertical", "θ = atan(a / h)", Statics.Equilibrium).Put("a", off).Put("h", up).Gives((across, rise) => Angle.FromRadians(Math.Atan2(across.Meters, rise.Meters))),
            new SidewaysPull(
                Sum.Of($"{pick.Name}, sideways, at rest", "H = V · a / h", Statics.Equilibrium).Put("V", carries).Put("a", off).Put("h", up).Gives((down, across, rise) => down * (across.Meters / rise.Meters)),
                aside > 0 ? x / aside : 0,
                aside > 0 ? y / aside : 0));
    }

    /// <summary>Whether nobody says that the area below is clear.</summary>
    public bool IsOver => below is not { IsKnown: true, Value: PeopleBelow.Never };

    private static Figure<Mass> Of(Given<Mass>? rating) => rating is { } given ? Figure.From(given) : Unknown;

    private Figure<Mass> Moved(string name, Figure<Mass> carries, Figure<Mass> own) =>
        Sum.Of(name, "Q = φ · (R + m)", Publication.CommonPractice)
            .Put("φ", Figure.Policy("dynamic-factor", Dynamic))
            .Put("R", carries)
            .Put("m", own)
            .Gives((factor, pull, mass) => factor * (pull + mass));

    private Figure<Mass> BelowHook(PlacedPick pick) =>
        StackFigures.Weight(pick.Pick.BodyUp ? pick.Gear : [.. Body(pick), .. pick.Gear], brief.Company.Policies.WeightMargin, $"{pick.Name}, below its hook");

    private Figure<Mass> All(PlacedPick pick) =>
        StackFigures.Weight([.. Body(pick), .. pick.AllGear], brief.Company.Policies.WeightMargin, $"{pick.Name}, hoist, chain and gear");

    private static IEnumerable<Piece> Body(PlacedPick pick) => pick.Hoist is { } hoist ? [hoist] : [];
}
