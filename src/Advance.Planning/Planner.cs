using Advance.Domain;

namespace Advance.Planning;

/// <summary>The door of this room: from the brief to the plan, in four steps. Each department is a function from what it needs to a result.</summary>
public static class Planner
{
    /// <summary>Works everything out.</summary>
    /// <param name="brief">What was written.</param>
    /// <param name="earlier">The plan of the last issue; what it chose is kept wherever it still can be. Null for a first plan.</param>
    public static Plan Plan(Brief brief, Plan? earlier = null)
    {
        var (gig, venue, company, stock) = brief;

        // Place: what stands and hangs where.
        var ground = StageDepartment.Survey(gig);
        var stage = StageDepartment.Place(gig, venue, stock, ground);
        var sound = SoundDepartment.Place(gig, company, stock, ground);
        var lighting = LightingDepartment.Place(gig, stock, ground);
        var power = PowerDepartment.Place(gig, stock, ground);
        var extras = ExtrasDepartment.Place(gig, stock);

        // Choose: ports, and what is pulled. Nothing after this adds a piece.
        var patch = PatchDepartment.Choose(gig, stock, company.Policies, sound, ground, earlier?.Patch);
        var backbone = Backbone.Of([stage.Pieces, sound.Pieces, lighting.Pieces, power.Pieces, extras, patch.Pieces], [sound.Links, patch.Links]);
        var pull = StockDepartment.Choose(backbone.Pieces, stock, company.Policies);

        // Settle: figures from what was chosen.
        var load = TruckDepartment.Settle(pull, company.Policies);

        // Judge: the rules see the finished plan, and only here.
        var plan = new Plan(brief, stage, sound, lighting, power, patch, pull, load, backbone.Pieces, backbone.Links, Findings: []);
        return plan with { Findings = Judges.Judge(plan) };
    }
}
