using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// The ways that cables may take: the edges of the deck and the named ways. A lead on the deck goes to an edge and along it, as a stagehand
/// lays it; what is near is joined straight; off the deck a lead takes the named way that comes near, else it goes straight to the deck and
/// is called estimated. No lead lies across what the venue keeps clear, unless on a named way or where there is no other. Knows one stage,
/// as the ground does.
/// </summary>
public sealed class Routes
{
    private readonly Terrain terrain;
    private readonly Network network;
    private readonly Doubts restsOn;
    private readonly IReadOnlyDictionary<string, Doubts> restsOnWay;
    private readonly Dictionary<(Spot, Spot), Route> found = [];
    private readonly Dictionary<Spot, IReadOnlyList<Approach>> approaches = [];

    private Routes(Terrain terrain, Network network, Doubts restsOn, IReadOnlyDictionary<string, Doubts> restsOnWay)
    {
        this.terrain = terrain;
        this.network = network;
        this.restsOn = restsOn;
        this.restsOnWay = restsOnWay;
    }

    /// <summary>Surveys a gig: the edges of its stage, its named ways, and what must stay clear.</summary>
    public static Routes Survey(Gig gig, Venue venue, Ground ground, CablePolicies policies)
    {
        var stage = gig.Stages.Count > 0 ? gig.Stages[0] : null;
        var climb = DeckClimb.Of(stage, policies).Value ?? policies.Climb;
        var lie = new Terrain(DeckOf(stage), NoGo.Of(venue, ground), policies.Near.Meters, climb.Meters);
        var survey = new NetworkSurvey(lie);
        survey.AddEdges();

        foreach (var way in gig.CableWays)
        {
            survey.AddWay(way, [.. way.Along.Select(place => ground.Find(place))]);
        }

        survey.JoinWhatIsNear();
        survey.JoinWhatIsLeft();
        return new Routes(lie, survey.Network, Doubts.Of(stage?.Size.Doubt), gig.CableWays.ToDictionary(way => way.Name, DoubtsOf, StringComparer.Ordinal));
    }

    /// <summary>Whether it is known where the deck is.</summary>
    public bool KnowsDeck => terrain.Deck is not null;

    /// <summary>What the venue keeps clear.</summary>
    internal IReadOnlyList<NoGo> Keep => terrain.Keep;

    /// <summary>How far a spot is from the deck, in metres; 0 on it, and without end where there is none.</summary>
    public double FromDeck(Spot spot) => terrain.FromDeck(spot);

    /// <summary>How far it is along the ways from one spot to another, up and down the edge of the deck included, without slack or trims.</summary>
    public Length Path(Spot from, Spot to)
    {
        var route = Find(from, to);
        return route.Path + Length.FromMeters(route.Climbs * terrain.Climb);
    }

    /// <summary>The way of a lead that lies on the deck and the floor. May be asked from several threads: what is remembered is not what is answered.</summary>
    public Route Find(Spot from, Spot to)
    {
        lock (found)
        {
            if (!found.TryGetValue((from, to), out var route))
            {
                found[(from, to)] = route = RouteOf(EitherWay(from, to), Level(from), Level(to));
            }

            return route;
        }
    }

    /// <summary>The way of a lead that goes straight through the air from one thing that hangs to another.</summary>
    public Route InTheAir(Spot from, Spot to) =>
        new(LegOf(from, to, "", way: null, isOnDeck: true, isEstimated: false), 0, [], IsInHall(from) || IsInHall(to), [], restsOn);

    /// <summary>Whether two spots are so near that a lead goes straight.</summary>
    public bool AreNear(Spot from, Spot to) => from.To(to) <= terrain.Near + 1e-6;

    private static Area? DeckOf(Stage? stage) =>
        stage is not null && stage.Size.Is(out var size) && size is { Width.Meters: > 0, Depth.Meters: > 0 }
            ? new Area(-size.Width.Meters / 2, size.Width.Meters / 2, 0, size.Depth.Meters)
            : null;

    private static Doubts DoubtsOf(CableWay way) => way.Along.Aggregate(Doubts.None, (sum, place) => sum.With(Doubts.Of(place.Doubt)));

    private bool Level(Spot spot) => terrain.IsOnDeck(spot);

    private bool IsInHall(Spot spot) => !(terrain.FromDeck(spot) <= terrain.Near);

    // Of two ways that are as good, the same one there and back.
    private Leg[] EitherWay(Spot from, Spot to) =>
        (from.X, from.Y).CompareTo((to.X, to.Y)) <= 0
            ? LegsOf(from, to)
            : [.. LegsOf(to, from).Reverse().Select(leg => leg with { From = leg.To, To = leg.From })];

    private Leg[] LegsOf(Spot from, Spot to)
    {
        var isLevel = Level(from) == Level(to);
        var direct = isLevel && MayGoStraight(from, to) ? terrain.Straight(from, to, Level(from)) : double.PositiveInfinity;
        if (isLevel && AreNear(from, to) && direct <= from.To(to) * Terrain.MostForStraight)
        {
            return LegOf(from, to, "", way: null, Level(from), isEstimated: false);
        }

        var best = Best(from, to);
        if (best is not { } way || direct <= way.Cost)
        {
            return LegOf(from, to, "", way: null, Level(from) && Level(to), isEstimated: !AreNear(from, to));
        }

        return
        [
            .. LegOf(from, way.Start.Spot, "", way: null, Level(from), way.Start.IsEstimated),
            .. Merged(LegsAlong(network.Way(way.Start.Point, way.End.Point)!)),
            .. LegOf(way.End.Spot, to, "", way: null, Level(to), way.End.IsEstimated),
        ];
    }

    // Far from any way, two ends are joined straight where they are closer to each other than to the stage.
    private bool MayGoStraight(Spot from, Spot to)
    {
        if (!Level(from) && terrain.IsUnderDeck(from, to))
        {
            return false;
        }

        if (AreNear(from, to))
        {
            return true;
        }

        var isLost = Approaches(from).All(way => way.IsEstimated) || Approaches(to).All(way => way.IsEstimated);
        return !Level(from) && isLost && from.To(to) < Math.Max(terrain.FromDeck(from), terrain.FromDeck(to));
    }

    private (Approach Start, Approach End, double Cost)? Best(Spot from, Spot to)
    {
        (Approach Start, Approach End, double Cost)? best = null;
        foreach (var start in Approaches(from))
        {
            foreach (var end in Approaches(to))
            {
                var cost = start.Cost + network.Cost(start.Point, end.Point) + end.Cost;
                if (cost < (best?.Cost ?? double.PositiveInfinity))
                {
                    best = (start, end, cost);
                }
            }
        }

        return best;
    }

    private IReadOnlyList<Approach> Approaches(Spot spot)
    {
        if (!approaches.TryGetValue(spot, out var all))
        {
            approaches[spot] = all = Level(spot) ? FromTheDeck(spot) : FromTheFloor(spot);
        }

        return all;
    }

    // To every edge, and to the ways that come near on the deck.
    private List<Approach> FromTheDeck(Spot spot) =>
    [
        .. network.Strands.Where(strand => strand.IsOnDeck).Select(strand => To(strand, spot)).Where(way => network.Strands[way.Point.Strand].Way is null || AreNear(spot, way.Spot)),
    ];

    // To what is near; where nothing is, straight to the nearest point of the deck and of each way.
    private List<Approach> FromTheFloor(Spot spot)
    {
        var all = network.Strands.Where(strand => !strand.IsOnDeck).Select(strand => To(strand, spot)).Where(way => !terrain.IsUnderDeck(spot, way.Spot)).ToList();
        var near = all.Where(way => AreNear(spot, way.Spot)).ToList();
        return near.Count > 0
            ? near
            : [.. all.GroupBy(way => network.Strands[way.Point.Strand].Way?.Name ?? "").Select(ways => ways.MinBy(way => spot.To(way.Spot)) with { IsEstimated = true })];
    }

    private Approach To(Strand strand, Spot spot)
    {
        var offset = strand.Nearest(spot);
        var there = strand.At(offset);
        return new Approach(new(strand.Number, offset), there, terrain.Straight(spot, there, strand.IsOnDeck), IsEstimated: false);
    }

    private IEnumerable<Leg> LegsAlong(IReadOnlyList<OnStrand> points)
    {
        for (var index = 1; index < points.Count; index++)
        {
            var (before, next) = (points[index - 1], points[index]);
            var (from, to) = (network.Strands[before.Strand], network.Strands[next.Strand]);
            var (start, end) = (from.At(before.Offset), to.At(next.Offset));
            foreach (var leg in IsAlong(from, to)
                ? LegOf(start, end, from.Name, from.Way, from.IsOnDeck || to.IsOnDeck, isEstimated: false)
                : LegOf(start, end, "", way: null, from.IsOnDeck, isEstimated: !AreNear(start, end)))
            {
                yield return leg;
            }
        }
    }

    private static bool IsAlong(Strand from, Strand to) => from.Number == to.Number || from.Twin == to.Number;

    private static List<Leg> Merged(IEnumerable<Leg> legs)
    {
        var merged = new List<Leg>();
        foreach (var leg in legs)
        {
            if (merged.Count > 0 && merged[^1].GoesOnIn(leg))
            {
                merged[^1] = merged[^1] with { To = leg.To };
            }
            else
            {
                merged.Add(leg);
            }
        }

        return merged;
    }

    // Nothing where both ends are at one place, to a tenth of a millimetre.
    private static Leg[] LegOf(Spot from, Spot to, string along, CableWay? way, bool isOnDeck, bool isEstimated) =>
        from.To(to) < 1e-4 ? [] : [new Leg(from, to, isOnDeck, along, way, isEstimated)];

    private Route RouteOf(IReadOnlyList<Leg> legs, bool startsOnDeck, bool endsOnDeck)
    {
        var levels = legs.Select(leg => leg.IsOnDeck).Prepend(startsOnDeck).Append(endsOnDeck).ToList();
        var outside = legs.Where(leg => IsInHall(leg.From) || IsInHall(leg.To)).ToList();
        var used = legs.Select(leg => leg.Way).OfType<CableWay>().Distinct().ToList();
        return new Route(
            legs,
            terrain.Deck is null ? 0 : levels.Zip(levels.Skip(1)).Count(pair => pair.First != pair.Second),
            [.. outside.Select(leg => leg.Way).OfType<CableWay>().Distinct()],
            outside.Count > 0,
            [.. terrain.Keep.Where(area => legs.Any(leg => leg is { IsOnDeck: false, Way: null } && area.IsCrossedBy(leg.From, leg.To))).Select(area => area.Clear.What)],
            used.Aggregate(restsOn, (sum, way) => sum.With(restsOnWay[way.Name])));
    }
}
