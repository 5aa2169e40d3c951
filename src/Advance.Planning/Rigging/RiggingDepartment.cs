using Advance.Domain;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Hangs trusses and flown loudspeakers, and works out what that asks of hoists, points and the roof.</summary>
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
        var hangs = gig.Sound.Hangs.SelectMany(new HangStand(pieces, ground).Place).ToList();
        return new RiggingPlacement(pieces.Made, drawn.Things, trusses) { Hangs = hangs };
    }

    /// <summary>Works it out from the cables as picked.</summary>
    public static RiggingPlan Settle(Brief brief, RiggingPlacement placed, Ground ground, SoundPlan sound, LightingPlan lighting, CablePlan cables)
    {
        var leads = new LeadsUp(brief, cables);
        var hanging = new HangStatics(brief, ground, sound, leads);
        var hangs = placed.Hangs.Select(hanging.Plan).ToList();
        var loads = new TrussLoads(brief, lighting, leads, hangs);
        var trusses = placed.Trusses.Select(truss => new TrussStatics(brief, truss, loads.Of(truss)).Plan()).ToList();
        List<PickPlan> picks = [.. trusses.SelectMany(truss => truss.Picks), .. hangs.SelectMany(hang => hang.Picks).Select(pick => pick.Pick)];
        var bridling = new BridleStatics(brief, ground);
        var bridles = brief.Gig.Rigging.Bridles.Select(bridle => bridling.Of(bridle, [.. picks.Where(pick => IsOn(pick, bridle))])).ToList();
        var points = new RoofLoads(brief, ground, picks, bridles).Points();
        var roof = points.Count == 0 ? null : BridleStatics.Total("all points of the roof, at rest", points.Select(point => point.AtRest));
        return new RiggingPlan(trusses, bridles, points, RoofLoads.Beams(brief.Venue, points), roof) { Hangs = hangs };
    }

    private static bool IsOn(PickPlan pick, Bridle bridle) => pick.Placed.Pick.Point.Is(out var name) && string.Equals(name, bridle.Name, StringComparison.OrdinalIgnoreCase);
}
