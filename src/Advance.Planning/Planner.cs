using Advance.Domain;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>The door of this room: from the brief to the plan, in four steps. Each department is a function from what it needs to a result.</summary>
public static class Planner
{
    /// <summary>Works everything out.</summary>
    /// <param name="brief">What was written.</param>
    /// <param name="earlier">What was chosen for the last issue; it is kept wherever it still can be. Null for a first plan.</param>
    public static Plan Plan(Brief brief, Choices? earlier = null)
    {
        Judges.WakeUp();
        brief = brief with { Venue = VenueDatum.FromStage(brief.Venue, brief.Gig) };
        var (gig, venue, company, stock) = brief;
        var policies = company.Policies;
        earlier ??= Choices.None;

        // Place: what stands and hangs where.
        var ground = StageDepartment.Survey(gig);
        var stage = StageDepartment.Place(gig, venue, stock, ground);
        var sound = SoundDepartment.Place(gig, company, stock, ground);
        var hung = RiggingDepartment.Place(brief, ground, sound);
        var lights = LightingDepartment.Place(gig, stock, ground, company);
        var placed = PowerDepartment.Place(gig, stock, ground);
        List<Piece> extras = [.. ExtrasDepartment.Place(gig, stock), .. TruckDepartment.Place(gig, stock)];
        var mics = PatchDepartment.Place(gig, stock, ground);
        var routes = Routes.Survey(gig, venue, ground, policies.Cables);

        // Choose: ports, addresses, circuits, leads, and what is pulled. Nothing after this adds a piece.
        // Ports are chosen beside the circuits: neither asks for the other.
        var patching = Task.Run(() => PatchDepartment.Choose(gig, stock, policies, sound, mics, ground, routes, earlier));
        var drive = DriveDepartment.Choose(gig, company, stock, sound, earlier);
        var lighting = LightingDepartment.Choose(gig, stock, policies, lights, earlier);
        List<Piece> powered = [.. stage.Pieces, .. sound.Pieces, .. lighting.Pieces, .. mics.Pieces, .. hung.Pieces, .. extras];
        var power = PowerDepartment.Choose(brief, placed, powered, ground, routes, earlier);
        var patch = patching.GetAwaiter().GetResult();
        List<Link> links = [.. sound.Links, .. patch.Links, .. drive.Links, .. lighting.Links, .. power.Links];
        var cables = CableDepartment.Choose(brief, links, [.. powered, .. power.Pieces], routes, earlier);
        var backbone = Backbone.Of([powered, power.Pieces, cables.Pieces], [links]);
        var pull = StockDepartment.Choose(gig, backbone.Pieces, stock, policies);

        // Settle: figures from what was chosen.
        var voltage = PowerDepartment.Settle(brief, power, cables);
        var protection = PowerDepartment.Protect(brief, power, cables);
        var standing = StandingDepartment.Settle(brief, stage, sound, lighting, hung.Trusses, ground);
        var rigging = RiggingDepartment.Settle(brief, hung, ground, sound, lighting, cables, standing.Cloths);
        var crew = CrewDepartment.Settle(brief, backbone, sound, patch, pull);
        var load = TruckDepartment.Settle(brief, backbone, pull, crew);

        // Judge: the rules see the finished plan, and only here.
        var plan = new Plan(
            brief, stage, sound, drive, lighting, power, patch, cables, pull, voltage, protection, rigging, load, standing, crew, backbone.Pieces, backbone.Links, Findings: []);
        return plan with { Findings = Judges.Judge(plan) };
    }
}
