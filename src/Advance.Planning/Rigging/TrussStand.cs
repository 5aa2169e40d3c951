using System.Globalization;
using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Makes trusses of their sections and gives them what holds them.</summary>
internal sealed class TrussStand(Pieces pieces, Drawn drawn, Brief brief)
{
    // Where nobody says how wide a truss is.
    private const double UsualWidth = 0.3;

    private readonly DropStand drops = new(pieces, drawn, brief);

    /// <summary>The truss with its sections, hoists and gear.</summary>
    public PlacedTruss Place(HungTruss truss)
    {
        var address = pieces.At(truss.Name);
        var kind = truss.Item.Is(out var id) ? brief.Stock.Find(id) : null;
        var spot = drawn.Find(truss.Place);
        var trim = TrimOf(truss);
        drawn.Add(address, truss.Name, Look.Truss, truss.Place, Covers(truss, kind));
        var from = truss.Length.Doubt is { } doubt ? Given.Of(new Owner(OwnerKind.Shop), truss.At, doubt) : (Given<Owner>?)null;
        var sections = Enumerable.Range(1, SectionsOf(truss, kind)).Select(number =>
            pieces.Ask(address / "section" / number, $"{truss.Name}, section {number}", truss.Item.Or("TBC"), from, spot, truss.At)).ToList();
        var picks = truss.Picks
            .OrderBy(pick => pick.Along.Is(out var along) ? along.Meters : double.MaxValue)
            .Select((pick, index) => drops.On(PickOf(truss, address, pick, index + 1, spot), trim, kind));
        return new PlacedTruss(address, truss, kind, spot, trim, sections, [.. picks]);
    }

    private PlacedPick PickOf(HungTruss truss, Address address, Pick pick, int number, Spot? spot)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{truss.Name}-{number}");
        var at = address / "pick" / number;
        var hoist = pick.Hoist is { } asked ? pieces.Ask(at / "hoist", $"hoist {name}", asked.Or("TBC"), from: null, spot, pick.At) : null;
        var gear = pick.Gear.SelectMany(item => Enumerable.Range(0, item.Count).Select(_ => pieces.Ask(at / item.Item, $"{item.Item} of {name}", item.Item, from: null, spot, pick.At)));
        return new PlacedPick(at, name, pick, hoist, [.. gear]);
    }

    // As many whole sections as are at least as long as it; one where nobody knows how long they are.
    private static int SectionsOf(HungTruss truss, Kind? kind) =>
        truss.Length.Is(out var length) && kind?.Truss is { } section && section.Length.Is(out var made) && made.Meters > 0
            ? Math.Max(1, (int)Math.Ceiling((length.Meters / made.Meters) - 1e-9))
            : 1;

    private static Footprint Covers(HungTruss truss, Kind? kind)
    {
        var along = truss.Length.Is(out var length) ? length.Meters : 1;
        var across = kind?.Truss?.Width is { IsKnown: true } width ? width.Value.Meters : UsualWidth;
        return truss.RunsUpstage ? new Footprint(across, along) : new Footprint(along, across);
    }

    private Figure<Length> TrimOf(HungTruss truss) => truss.Trim.Is(out var trim) && trim.Above == HeightFrom.Deck
        ? Sum.Of("trim above the floor", "t = d + h", Publication.Arithmetic)
            .Put("d", drawn.Ground.DeckHeight)
            .Put("h", Figure.From(truss.Trim.Select(written => written.Height)))
            .Gives((deck, up) => deck + up)
        : Ground.HeightOf(truss.Trim);
}
