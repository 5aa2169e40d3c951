using Advance.Domain;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Hangs trusses and flown loudspeakers, and works out what that asks of hoists, points and the roof.</summary>
public static class RiggingDepartment
{
    private const string Name = "rigging";

    /// <summary>Places it all.</summary>
    public static RiggingPlacement Place(Brief brief, Ground ground, SoundPlan sound)
    {
        var pieces = new Pieces(Name, brief.Stock);
        var drawn = new Drawn(ground);
        var stand = new TrussStand(pieces, drawn, brief);
        var trusses = brief.Gig.Rigging.Trusses.Select(stand.Place).ToList();
        var hangs = brief.Gig.Sound.Hangs.SelectMany(new HangStand(pieces, ground).Place).ToList();
        var bridling = new BridleStand(pieces, brief, ground, trusses, hangs.ConvertAll(hang => (hang, sound.Hangs.First(stack => stack.Name == hang.Name))));
        var bridles = brief.Gig.Rigging.Bridles.Select(bridling.Place).ToList();
        return new RiggingPlacement(pieces.Made, drawn.Things, trusses) { Hangs = hangs, Bridles = bridles };
    }

    /// <summary>Works it out from the cables as picked.</summary>
    public static RiggingPlan Settle(Brief brief, RiggingPlacement placed, Ground ground, SoundPlan sound, LightingPlan lighting, CablePlan cables, IReadOnlyList<ClothPlan> cloths)
    {
        var leads = new LeadsUp(brief, cables);
        var hanging = new HangStatics(brief, ground, sound, leads, placed.Bridles);
        var hangs = placed.Hangs.Select(hanging.Plan).ToList();
        var loads = new TrussLoads(brief, lighting, leads, hangs);
        var pushes = new TrussPushes(brief, StandingSite.Of(brief.Gig, brief.Venue), loads, cloths, hangs);
        var trusses = placed.Trusses.Select(truss => new TrussStatics(brief, truss, placed.Bridles, loads.Of(truss), pushes.On(truss)).Plan()).ToList();
        List<PickPlan> picks = [.. trusses.SelectMany(truss => truss.Picks), .. hangs.SelectMany(hang => hang.Picks).Select(pick => pick.Pick)];
        var bridling = new BridleStatics(brief);
        var bridles = placed.Bridles.Select(bridle => bridling.Of(bridle, [.. picks.Where(pick => IsOn(pick, bridle.Bridle))])).ToList();
        var onRoof = new RoofLoads(brief, ground, picks, bridles);
        var points = onRoof.Points();
        var roof = points.Count == 0 ? null : BridleStatics.Total("all points of the roof, at rest", points.Select(point => point.AtRest));
        return new RiggingPlan(trusses, bridles, points, RoofLoads.Beams(brief.Venue, points), roof) { Bays = RoofBays.Of(brief.Venue, points), Hangs = hangs, Unused = onRoof.Unused() };
    }

    private static bool IsOn(PickPlan pick, Bridle bridle) => pick.Placed.Pick.Point.Is(out var name) && string.Equals(name, bridle.Name, StringComparison.OrdinalIgnoreCase);
}
