using Advance.Domain;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Finds each link its way and picks its leads from what the shop owns.</summary>
public static class CableDepartment
{
    private const string Name = "cable";

    /// <summary>Chooses leads for all links at once.</summary>
    /// <param name="brief">As written.</param>
    /// <param name="links">Everything that must be connected.</param>
    /// <param name="pieces">Everything that stands in the plan already: leads among it are used up.</param>
    /// <param name="routes">The ways.</param>
    /// <param name="earlier">What was chosen for the last issue.</param>
    public static CablePlan Choose(Brief brief, IReadOnlyList<Link> links, IReadOnlyList<Piece> pieces, Routes routes, Choices earlier)
    {
        var (gig, _, company, stock) = brief;
        var policies = company.Policies.Cables;
        var stageBoxes = gig.Sound.StageBoxes.Select(box => box.Name).ToHashSet(StringComparer.Ordinal);
        var distributions = gig.Power.Distributions.Select(box => box.Name).ToHashSet(StringComparer.Ordinal);
        var lengths = new NeededLength(routes, DeckClimb.Of(gig.Stages.Count > 0 ? gig.Stages[0] : null, policies), policies);
        var sketches = RunLinks.Of(links, stageBoxes, distributions)
            .Select(run => RunSketch.Of(run, Address.Of(Name) / run.Label, lengths, distributions, policies))
            .OrderBy(sketch => sketch.Address)
            .ToList();

        var picks = LeadPicks.Of(sketches, stock, pieces, earlier);
        var looms = Looms.Of(sketches, policies);
        var laid = new Pieces(Name, stock);
        List<Run> runs = [.. sketches.Select((sketch, index) => Lay(sketch, picks[index], looms.GetValueOrDefault(sketch.Address), laid))];
        return new CablePlan(
            runs,
            laid.Made,
            [.. runs.SelectMany(run => run.Figures)],
            new Choices(picks.Where(pick => pick.Chain is not null).Select(pick => KeyValuePair.Create(pick.Run, pick.Chain!.Text))))
        {
            KnowsDeck = routes.KnowsDeck,
            Keep = routes.Keep,
        };
    }

    private static Run Lay(RunSketch sketch, LeadPick pick, string? loom, Pieces laid)
    {
        IReadOnlyList<Kind> leads = [.. pick.Chain?.Leads.Select(lead => lead.Kind) ?? []];
        foreach (var lead in Pulled(leads, pick.Own))
        {
            laid.Ask(sketch.Address / lead.Id, sketch.Label, lead.Id, from: null, spot: null, sketch.Link.At, new Need.Connects(sketch.Link.Address, sketch.Link.At));
        }

        var madeUp = MadeUp(leads, sketch.Needed);
        return new Run(sketch.Address, sketch.Label, sketch.Link, sketch.Needed, leads, madeUp)
        {
            Links = sketch.Links,
            Surplus = Sum.Of("left over", "s = M - L", Publication.Arithmetic).Put("M", madeUp).Put("L", sketch.Needed).Gives((made, needed) => made - needed),
            Route = sketch.Route,
            MostJoins = sketch.Use.MostJoins,
            Gap = pick.Gap,
            Longest = Length.FromMillimeters(pick.Longest),
            LeftOverAt = sketch.Use.IsLeftAtSource ? sketch.Link.From : sketch.Link.To,
            Loom = loom,
        };
    }

    // The unit's own lead is in the plan already, with the unit.
    private static List<Kind> Pulled(IReadOnlyList<Kind> leads, Kind? own)
    {
        var left = leads.ToList();
        if (own is not null)
        {
            left.Remove(own);
        }

        return left;
    }

    // What is picked rests on what is needed.
    private static Figure<Length> MadeUp(IReadOnlyList<Kind> leads, Figure<Length> needed)
    {
        if (leads.Count == 0)
        {
            return new Figure<Length>(null, needed.RestsOn, Reason.Derived.It);
        }

        var total = Sum.Of("length made up", "M = Σ ℓᵢ", Publication.Arithmetic)
            .PutAll("ℓᵢ", leads.Select(lead => Figure.From(lead.Cable!.Length)))
            .Gives(terms => terms.Values.Aggregate(Length.Zero, (sum, length) => sum + length));
        return total with { RestsOn = total.RestsOn.With(needed.RestsOn) };
    }
}
