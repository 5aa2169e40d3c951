using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Hangs steels between a hoist and its point where its chain would else not come down to the floor.</summary>
internal sealed class DropStand(Pieces pieces, Drawn drawn, Brief brief)
{
    /// <summary>The pick with its steels; as it was where its chain is long enough, steels were written, nobody knows, or none in the stock fit.</summary>
    public PlacedPick On(PlacedPick written, Figure<Length> trim, Kind? truss)
    {
        var pick = written with { Above = AboveOf(written.Pick) };
        if (pick.Hoist?.Kind is not { Hoist: { } hoist } kind || PointOf(pick.Pick) is not { } point || !point.Height.Is(out var height) || trim.Value is not { } at
            || hoist.ChainLength is not { IsKnown: true } chain || hoist.Headroom is not { IsKnown: true } headroom || pick.Gear.Any(piece => piece.Kind?.Lifting?.Made == LiftingKind.Steel))
        {
            return pick;
        }

        var gear = GearLengths.Of(pick.Gear).Meters;
        var policies = brief.Company.Policies.Rigging;
        var least = height.Meters - gear - ((chain.Value - policies.ChainReserve).Meters / hoist.Falls);
        var depth = truss?.Size is { IsKnown: true, Value.Height: { } high } ? high.Meters : 0;
        var most = height.Meters - at.Meters - depth - headroom.Value.Meters - gear;
        var stock = new SteelStock(brief.Stock, (hoist.Lifts.Or(default).Kilograms + (kind.Weight?.Or(default).Kilograms ?? 0)) / (policies.OverPeople / 100));
        return least <= 1e-9 || stock.Between(least, most) is not { } made ? pick : pick with { DropMade = made, Drop = Made(pick, made, Doubts.Of(point.Height.Doubt).With(trim.RestsOn).With(stock.Doubts)) };
    }

    private List<Piece> Made(PlacedPick pick, LegMade made, Doubts doubts)
    {
        var from = doubts.Any ? Given.Of(new Owner(OwnerKind.Shop), pick.Pick.At, doubts.First()) : (Given<Owner>?)null;
        return [.. made.Parts.Concat(Enumerable.Repeat(made.Shackle!, made.Shackles)).Select(kind => pieces.Ask(pick.Address / "drop" / kind.Id, $"{kind.Id} above {pick.Name}", kind.Id, from, pick.Hoist!.Spot, pick.Pick.At))];
    }

    private RiggingPoint? AboveOf(Pick pick) => PointOf(pick) is { } point && drawn.Find(point.Place) is { } spot && point.Height.Is(out var height) ? new RiggingPoint(spot.X, spot.Y, height.Meters) : null;

    private RoofPoint? PointOf(Pick pick) => pick.Point.Is(out var name) ? brief.Venue.PointNamed(name) : null;
}
