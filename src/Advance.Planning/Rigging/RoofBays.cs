using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>Adds up what hangs in each bay of the roof: on the points in it and those of its beams, and what others have hung on those beams.</summary>
internal static class RoofBays
{
    /// <summary>Each bay that something of ours hangs in, in the venue's order.</summary>
    public static IReadOnlyList<BayPlan> Of(Venue venue, IReadOnlyList<PointPlan> points)
    {
        var bays = venue.RoofBays.Select(bay => (Bay: bay, On: points.Where(point => Is(BayOf(venue, point.Point), bay)).ToList()));
        return [.. from one in bays where one.On.Count > 0 select new BayPlan(one.Bay, one.On, AllIn(venue, one.Bay, one.On))];
    }

    private static Figure<UnitsNet.Mass> AllIn(Venue venue, RoofBay bay, List<PointPlan> points)
    {
        var others = venue.RoofBeams.Where(beam => Is(beam.Bay, bay)).SelectMany(beam => beam.Others).Select(other => Figure.From(other.Weight));
        var all = BridleStatics.Total($"{bay.Name}, all that hangs in it", [.. points.Select(point => point.AtRest), .. others]);
        return all with { RestsOn = points.Aggregate(all.RestsOn, (sum, point) => sum.With(Doubts.Of(BayOf(venue, point.Point)?.Doubt))) };
    }

    private static Given<string>? BayOf(Venue venue, RoofPoint point) =>
        point.Bay ?? (point.Beam is { IsKnown: true } name ? venue.RoofBeams.FirstOrDefault(beam => string.Equals(beam.Name, name.Value, StringComparison.OrdinalIgnoreCase))?.Bay : null);

    private static bool Is(Given<string>? said, RoofBay bay) => said is { IsKnown: true } name && string.Equals(name.Value, bay.Name, StringComparison.OrdinalIgnoreCase);
}
