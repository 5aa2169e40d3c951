using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/no-safety-bond</c></summary>
internal sealed class NoSafetyBond : Rule<NoSafetyBond.Case>
{
    public override string Name => "rigging/no-safety-bond";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Something hangs over people by its clamp alone: no safety bond goes with it, or one that is rated for less than it weighs.";

    public override string Why => "A clamp works loose, and a lamp falls on somebody.";

    public override string Cures => "A rated bond with each, by with in the stock; or say what else holds it, by secondary.";

    public override Publication Source => Publication.CommonPractice;

    // A cloth or a loom that is tied all along falls from no single tie.
    protected override IEnumerable<Case> Cases(Plan plan) => Fixtures(plan).Concat(Loads(plan)).GroupBy(one => (one.Place, one.What)).Select(group => group.First() with { Count = group.Sum(one => one.Count) });

    protected override Said Say(Case found) => found.Bond is { } bond
        ? new($"{found.Count} x {found.What} on {found.On}: {bond.Id} holds {bond.Lifting!.Rating.Or(default)}, and each weighs {found.Weight!.Value}.", "A bond that is rated for it.", $"{bond.Id}")
        : new($"{found.Count} x {found.What} on {found.On}, over people: no safety bond goes with it.", Cures, $"none");

    private static IEnumerable<Case> Fixtures(Plan plan)
    {
        var above = plan.Brief.Company.Policies.Rigging.BondAbove;
        foreach (var fixture in plan.Lighting.Fixtures.Where(fixture => fixture.Position is { Carrier: null }))
        {
            var truss = plan.Rigging.Trusses.FirstOrDefault(truss => plan.Brief.Gig.Rigging.At(fixture.Position!.Position.Place) == truss.Placed.Truss);
            if (truss is null ? fixture.Position!.Height.Value is { } height && height >= above : IsOver(truss))
            {
                var parts = plan.Lighting.Pieces.Where(piece => piece.Address.Text.StartsWith(fixture.Address.Text + "/", StringComparison.Ordinal)).Select(piece => piece.Kind);
                yield return Judge(fixture.Piece.Item, 1, truss?.Name ?? fixture.Position!.Name, fixture.Piece.Kind, parts, truss?.Address ?? fixture.Position!.Address, fixture.Row.At);
            }
        }
    }

    private static IEnumerable<Case> Loads(Plan plan) =>
        from load in plan.Brief.Gig.Rigging.Dressing
        let truss = plan.Rigging.Trusses.FirstOrDefault(truss => string.Equals(truss.Name, load.Truss, StringComparison.OrdinalIgnoreCase))
        where truss is not null && IsOver(truss) && load.Along is not null && load.To is null && !IsSaid(load)
        let kind = load.Item is { } item && item.Is(out var id) ? plan.Brief.Stock.Find(id) : null
        select Judge(load.What, load.Count, truss.Name, kind, kind?.With.Select(one => plan.Brief.Stock.Find(one.Item)) ?? [], truss.Address, load.At);

    private static bool IsSaid(TrussLoad load) => load.Secondary is { } said && (!said.Is(out var words) || !string.Equals(words, "none", StringComparison.OrdinalIgnoreCase));

    private static bool IsOver(TrussPlan truss) => truss.Placed.Truss.Below is not { IsKnown: true, Value: PeopleBelow.Never };

    // What is not rated is no bond. Of several the strongest counts.
    private static Case Judge(string what, int count, string on, Kind? kind, IEnumerable<Kind?> with, Address place, Mark at)
    {
        var bond = with.OfType<Kind>().Where(one => one.Lifting is { Made: LiftingKind.Bond, Rating.IsKnown: true }).OrderByDescending(one => one.Lifting!.Rating.Value).FirstOrDefault();
        var weight = kind?.Weight is { IsKnown: true } known ? known.Value : (Mass?)null;
        return new Case(what, count, on, bond, weight, place / "bond" / what, at, bond is not null && (weight is not { } heavy || heavy <= bond.Lifting!.Rating.Value) ? Verdict.Holds : Verdict.Fails);
    }

    internal sealed record Case(string What, int Count, string On, Kind? Bond, Mass? Weight, Address Place, Mark Written, Verdict Is) : Judgement(Place, Written, Is, Doubts.None);
}
