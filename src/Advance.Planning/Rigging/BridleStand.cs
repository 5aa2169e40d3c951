using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Hangs bridles: where the hook is wanted, what the legs are made of, and where the hook then comes to hang.</summary>
internal sealed class BridleStand(Pieces pieces, Brief brief, Ground ground, IReadOnlyList<PlacedTruss> trusses, IReadOnlyList<(PlacedHang Hang, StackPlan Stack)> hangs)
{
    /// <summary>The bridle with its legs.</summary>
    public PlacedBridle Place(Bridle bridle)
    {
        var address = pieces.At("bridle") / bridle.Name;
        var points = bridle.Points.Select(brief.Venue.PointNamed).ToList();
        var anchors = points.Select(AnchorOf).ToList();
        var on = On(bridle).ToList();
        var known = anchors.Count is 2 or 3 && anchors.TrueForAll(anchor => anchor is not null) ? anchors.ConvertAll(anchor => anchor!.Value) : new List<RiggingPoint>();
        var wanted = known.Count == 0 ? null : WantedOf(bridle, known, on);
        var doubts = DoubtsOf(bridle, points, on);
        var placed = new PlacedBridle(address, bridle, []) { Anchors = known, Wanted = wanted, Apex = wanted, RestsOn = doubts, Lost = LostOf(bridle, on) };
        return bridle.Gear.Count > 0 || wanted is null ? placed with { Legs = [.. bridle.Points.Select((point, index) => AsWritten(placed, point, index))] } : Chosen(placed, on);
    }

    private IEnumerable<(PlacedPick Pick, Spot? Under, Doubts RestsOn)> On(Bridle bridle) =>
    [
        .. from truss in trusses
           from pick in truss.Picks
           where IsOn(pick, bridle)
           select (pick, pick.Pick.Along.Is(out var along) ? truss.At(along.Meters) : null, truss.RestsOn),
        .. from one in hangs
           from pick in one.Hang.Picks.Index()
           where IsOn(pick.Item, bridle)
           let at = HangSpots.Before(one.Hang, one.Stack, pick.Index)
           select (pick.Item, at.Spot, at.RestsOn),
    ];

    private PlacedLeg AsWritten(PlacedBridle placed, string point, int index) => new(
        point,
        placed.Ways.Count > index ? placed.Ways[index].Length : null,
        [.. placed.Bridle.Gear.SelectMany(item => Enumerable.Range(0, item.Count).Select(_ => Ask(placed, point, item.Item)))]);

    private PlacedBridle Chosen(PlacedBridle placed, List<(PlacedPick Pick, Spot? Under, Doubts RestsOn)> on)
    {
        var stock = new SteelStock(brief.Stock, Bears(placed, on));
        var choice = new LegChoice(stock, placed.Anchors, placed.Wanted!.Value);
        var legs = choice.Within(brief.Company.Policies.Rigging.BridleWithin.Meters);
        var doubts = placed.RestsOn.With(stock.Doubts);
        return legs is null
            ? placed with { IsOff = true, Nearest = choice.Nearest, RestsOn = doubts, Legs = [.. placed.Bridle.Points.Select((point, index) => AsWritten(placed, point, index))] }
            : placed with
            {
                RestsOn = doubts,
                Nearest = choice.Nearest,
                Apex = BridleGeometry.ApexOf(placed.Anchors, [.. legs.Select(leg => leg.Length)]),
                Legs = [.. legs.Select((leg, index) => LegOf(placed with { RestsOn = doubts }, index, leg))],
            };
    }

    private PlacedLeg LegOf(PlacedBridle placed, int index, LegMade made)
    {
        var point = placed.Bridle.Points[index];
        var items = made.Parts.Concat(Enumerable.Repeat(made.Shackle!, made.Shackles)).Select(kind => Ask(placed, point, kind.Id));
        return new PlacedLeg(point, placed.Ways[index].Length, [.. items]) { Made = made };
    }

    private Piece Ask(PlacedBridle placed, string point, string item)
    {
        var from = placed.RestsOn.Any ? Given.Of(new Owner(OwnerKind.Shop), placed.Bridle.At, placed.RestsOn.First()) : (Given<Owner>?)null;
        return pieces.Ask(placed.Address / point / item, $"{item} of {placed.Bridle.Name} to {point}", item, from, spot: null, placed.Bridle.At);
    }

    // Chosen before anybody knows what hangs on it: for all that its hoists may lift, over people, by the flattest leg.
    private double Bears(PlacedBridle placed, List<(PlacedPick Pick, Spot? Under, Doubts RestsOn)> on)
    {
        var hoists = on.Sum(one => (one.Pick.Hoist?.Kind?.Hoist?.Lifts.Or(default).Kilograms ?? 0) + (one.Pick.Hoist?.Kind?.Weight?.Or(default).Kilograms ?? 0));
        var most = placed.Shares.Zip(placed.Ways, (share, way) => share * BridleGeometry.PullPerDown(way)).DefaultIfEmpty(1).Max();
        return most * hoists / (brief.Company.Policies.Rigging.OverPeople / 100);
    }

    // By its legs as said; else as far under its lowest point as was said, under the pick.
    private static RiggingPoint? WantedOf(Bridle bridle, List<RiggingPoint> anchors, List<(PlacedPick Pick, Spot? Under, Doubts RestsOn)> on)
    {
        if (bridle.Legs.Count == anchors.Count)
        {
            return BridleGeometry.ApexOf(anchors, [.. bridle.Legs.Select(leg => leg.Meters)]);
        }

        var under = on.Select(one => one.Under).FirstOrDefault(spot => spot is not null);
        return bridle.Drop is { } given && given.Is(out var drop) && under is { } spot ? new RiggingPoint(spot.X, spot.Y, anchors.Min(anchor => anchor.Z) - drop.Meters) : null;
    }

    // Its hook is wanted under a pick, and nobody knows where that is.
    private static string? LostOf(Bridle bridle, List<(PlacedPick Pick, Spot? Under, Doubts RestsOn)> on) =>
        bridle.Legs.Count == 0 && on.Count > 0 && on.TrueForAll(one => one.Under is null) ? on[0].Pick.Name : null;

    private static Doubts DoubtsOf(Bridle bridle, List<RoofPoint?> points, List<(PlacedPick Pick, Spot? Under, Doubts RestsOn)> on)
    {
        var fixedAt = points.Aggregate(Doubts.Of(bridle.Drop?.Doubt), (sum, point) => sum.With(Doubts.Of(point?.Place.Doubt)).With(Doubts.Of(point?.Height.Doubt)));
        return bridle.Legs.Count > 0 ? fixedAt : on.Aggregate(fixedAt, (sum, one) => sum.With(one.RestsOn));
    }

    private RiggingPoint? AnchorOf(RoofPoint? point) => point is not null && ground.Find(point.Place) is { } spot && point.Height.Is(out var height) ? new RiggingPoint(spot.X, spot.Y, height.Meters) : null;

    private static bool IsOn(PlacedPick pick, Bridle bridle) => pick.Pick.Point.Is(out var name) && string.Equals(name, bridle.Name, StringComparison.OrdinalIgnoreCase);
}
