using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/off-node</c></summary>
internal sealed class OffNode : Rule<OffNode.Case>
{
    public override string Name => "rigging/off-node";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A truss is held, or bears more in one place than it may between its nodes, where its chords are not braced.";

    public override string Why => "Between nodes a chord bends by itself, which no figure of the maker for the whole truss covers.";

    public override string Cures => "Move it to the nearest node, spread it over two with a beam or a ladder, or ask the maker.";

    public override Publication Source => Handbook.RiggingStandards.Truss;

    // What is at a node, and what is light, holds; of truss whose nodes nobody tells nothing is said.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var policies = plan.Brief.Company.Policies.Rigging;
        return
            from truss in plan.Rigging.Trusses
            where truss.Placed.Kind?.Truss is { Nodes.IsKnown: true }
            let own = truss.Placed.Kind!.Truss!
            let light = own.BetweenNodes is { IsKnown: true } said ? said.Value : policies.BetweenNodes
            from one in Places(truss)
            where one.Weight is null || one.Weight > light
            let away = TrussNodes.Away(own, one.Along)
            where away is not null
            group one by Length.FromMeters(away.Value) > policies.AtNode into sorted
            from one in sorted
            select new Case(one.Truss, one.What, one.At, Length.FromMeters(one.Along), sorted.Key);
    }

    protected override Said Say(Case found) => new(
        $"{found.What} is {found.Along} along {found.Truss.Name}, between two nodes.", "Move it to the nearest node, spread it over two, or ask the maker.", $"{found.Along}");

    private static IEnumerable<(TrussPlan Truss, string What, Mark At, double Along, Mass? Weight)> Places(TrussPlan truss) =>
    [
        .. from pick in truss.Picks
           where pick.Placed.Pick.Along.IsKnown
           select (truss, pick.Name, pick.Placed.Pick.At, pick.Placed.Pick.Along.Value.Meters, (Mass?)null),
        .. from load in truss.Loads
           where load.To is null && load.From >= 0 && load.Weight.Value is not null
           select (truss, load.What, truss.Placed.Truss.At, load.From!.Value, load.Weight.Value),
    ];

    internal sealed record Case(TrussPlan Truss, string What, Mark Written, Length Along, bool IsOff)
        : Judgement(Truss.Address / "node" / What, Written, IsOff ? Verdict.Fails : Verdict.Holds, Truss.RestsOn);
}
