using Advance.Domain;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Hangs trusses, and works out what that asks of hoists, points and the roof.</summary>
public static class RiggingDepartment
{
    private const string Name = "rigging";

    /// <summary>Places it all.</summary>
    public static RiggingPlacement Place(Gig gig, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        var stand = new TrussStand(pieces, drawn, stock);
        var trusses = gig.Rigging.Trusses.Select(stand.Place).ToList();
        return new RiggingPlacement(pieces.Made, drawn.Things, trusses);
    }

    /// <summary>Works it out from the cables as picked.</summary>
    public static RiggingPlan Settle(Brief brief, RiggingPlacement placed, Ground ground, LightingPlan lighting, CablePlan cables)
    {
        var loads = new TrussLoads(brief, lighting, cables);
        var trusses = placed.Trusses.Select(truss => new TrussStatics(brief, truss, loads.Of(truss)).Plan()).ToList();
        var bridling = new BridleStatics(brief, ground);
        var bridles = brief.Gig.Rigging.Bridles.Select(bridle => bridling.Of(bridle, [.. trusses.SelectMany(truss => truss.Picks).Where(pick => IsOn(pick, bridle))])).ToList();
        var points = new RoofLoads(brief, trusses, bridles).Points();
        var roof = points.Count == 0 ? null : BridleStatics.Total("all points of the roof, at rest", points.Select(point => point.AtRest));
        return new RiggingPlan(trusses, bridles, points, RoofLoads.Beams(brief.Venue, points), roof);
    }

    private static bool IsOn(PickPlan pick, Bridle bridle) => pick.Placed.Pick.Point.Is(out var name) && string.Equals(name, bridle.Name, StringComparison.OrdinalIgnoreCase);
}
