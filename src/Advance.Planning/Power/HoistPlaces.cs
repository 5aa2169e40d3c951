using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Where motors of hoists are, for the leads up to them: at the truss or the frame, or at the roof where the body hangs up there.</summary>
internal static class HoistPlaces
{
    /// <summary>Of every pick of every truss and hang, by the address of its hoist.</summary>
    public static IEnumerable<(Address Address, LoadPlace Place)> Of(Brief brief, Ground ground) =>
    [
        .. from truss in brief.Gig.Rigging.Trusses
           from pick in truss.Picks.OrderBy(pick => pick.Along.Is(out var along) ? along.Meters : double.MaxValue).Index()
           select (AddressOf(truss.Name, pick.Index), OnTruss(brief, ground, truss, pick.Item)),
        .. from hang in brief.Gig.Sound.Hangs
           from one in Mirrored.Each(hang.Name, hang.Sides)
           from pick in hang.Flown!.Picks.Index()
           select (AddressOf(one.Name, pick.Index), OnHang(brief, ground, hang, one, pick.Item)),
    ];

    private static Address AddressOf(string name, int index) => Address.Of("rigging") / name / "pick" / (index + 1) / "hoist";

    private static LoadPlace OnTruss(Brief brief, Ground ground, HungTruss truss, Pick pick)
    {
        var middle = ground.Find(truss.Place);
        var from = pick.Along.Is(out var along) && truss.Length.Is(out var length) ? along.Meters - (length.Meters / 2) : (double?)null;
        var spot = from is not { } far ? middle : truss.RunsUpstage ? middle?.Plus(0, far) : middle?.Plus(far, 0);
        var height = pick.BodyUp ? Roof(brief, ground, pick.Point, spot) : LoadPlaces.Above(truss.Trim, brief.Gig, spot);
        return new LoadPlace(PowerUse.Other, Spot: spot, Height: height) { RestsOn = Doubts.Of(truss.Place.Doubt).With(Doubts.Of(truss.Length.Doubt)).With(Doubts.Of(pick.Along.Doubt)).With(Doubts.Of(pick.BodyUp ? pick.Point.Doubt : truss.Trim.Doubt)) };
    }

    private static LoadPlace OnHang(Brief brief, Ground ground, Stack hang, Mirrored one, HangPick pick)
    {
        var spot = ground.Find(hang.Place, one.Side);
        var points = pick.Points.Is(out var named) ? named : [];
        var point = points.Count == 0 ? (Given<string>?)null : points[Math.Min(points.Count == 1 ? 0 : one.Index, points.Count - 1)];
        var height = pick.BodyUp
            ? point is { } up ? Roof(brief, ground, up, spot) : null
            : HangHeights.Top(hang, HangItems.Of(hang, brief.Stock).Boxes.Select(box => brief.Stock.Find(box.Item)), ground, spot);
        return new LoadPlace(PowerUse.Other, Spot: spot, Height: height) { RestsOn = Doubts.Of(hang.Place.Doubt).With(HangHeights.RestsOn(hang)).With(Doubts.Of(pick.Points.Doubt)).With(Doubts.Of(point?.Doubt)) };
    }

    // Above what is under it; null for a bridle, and where nobody knows.
    private static double? Roof(Brief brief, Ground ground, Given<string> name, Spot? spot) =>
        name.Is(out var asked) && brief.Venue.PointNamed(asked) is { } point && point.Height.Is(out var high)
            ? high.Meters - (ground.HeightAt(spot).Value?.Meters ?? 0)
            : null;
}
