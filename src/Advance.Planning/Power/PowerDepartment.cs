using Advance.Domain;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Places distributions, gives every load its outlet, and adds up what they carry.</summary>
public static class PowerDepartment
{
    private const string Name = "power";

    /// <summary>Places the distributions.</summary>
    public static PowerPlacement Place(Gig gig, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        Devices.Stand(gig.Power.Distributions, pieces, drawn);
        return new PowerPlacement(pieces.Made, drawn.Things);
    }

    /// <summary>Chooses an outlet for every load.</summary>
    /// <param name="brief">As written.</param>
    /// <param name="placed">The distributions.</param>
    /// <param name="pieces">Everything that may need mains.</param>
    /// <param name="ground">Where places are found.</param>
    /// <param name="routes">The ways, for the length of feeders.</param>
    /// <param name="earlier">What was chosen for the last issue.</param>
    public static PowerPlan Choose(
        Brief brief, PowerPlacement placed, IReadOnlyList<Piece> pieces, Ground ground, Routes routes, Choices earlier)
    {
        var mating = Mating.Of(brief.Stock);
        var tree = SupplyTree.Of(brief, ground, mating, earlier);
        var (chains, notNamed) = PowerChains.Of(brief.Gig, PowerLoads.Of(brief, pieces, ground));
        var draws = new StateDraw(brief.Company.Policies, brief.Gig.ShowStates);
        var allowed = AllowedPower.Of(brief.Gig, tree);
        var hung = new CircuitAssembly(tree, chains, draws, allowed, mating, routes, earlier).Hang();

        var sums = new SupplySums(draws, allowed, brief.Company.Policies);
        var allowances = allowed.All();
        var circuits = tree.Outlets.Where(outlet => outlet.Chain is not null).Select(outlet => CircuitOf(outlet, sums)).ToList();
        List<SupplyPoint> upstreams = [.. tree.Upstreams.Select(sums.PointOf)];
        List<SupplyPoint> services = [.. tree.Services.Select(sums.PointOf)];
        List<SupplyPoint> distributions = [.. tree.Distributions.Select(sums.PointOf)];
        List<SupplyPoint> feeders = [.. distributions.SelectMany(point => point.Feeds).Where(point => point.Service is null).DistinctBy(point => point.Address)];
        var switchOn = SwitchOnOrder.Of(circuits);
        var powers = new ServicePowers(new NodeDraws(draws, allowed));
        List<ServicePower> given = [.. tree.Services.Zip(services, powers.Of)];
        List<GeneratorPlan> generators = [.. new GeneratorPlans(brief, switchOn).Of(given)];
        return new PowerPlan(
            placed.Pieces,
            placed.Things,
            [.. new PowerLinks(routes).Of(tree)],
            [.. upstreams.Concat(services).Concat(distributions).Concat(feeders).SelectMany(point => point.Figures), .. circuits.SelectMany(circuit => circuit.Outlet.Figures), .. allowances.SelectMany(one => one.Figures), .. InUse(given).SelectMany(one => one.Figures), .. generators.SelectMany(one => one.Figures)],
            new Choices([.. tree.Chosen.InOrder, .. circuits.Select(circuit => KeyValuePair.Create(CircuitAssembly.AddressOf(circuit.Chain), circuit.Name))]))
        {
            Upstreams = upstreams,
            Services = services,
            Powers = given,
            Generators = generators,
            Distributions = distributions,
            Feeders = feeders,
            Circuits = circuits,
            SwitchOn = switchOn,
            Unfed = hung.Unfed,
            GivenUp = [.. notNamed, .. hung.GivenUp],
            ToFree = hung.ToFree,
            Costly = hung.Costly,
            Allowances = allowances,
            Faults = tree.Faults,
            IsProven = hung.IsProven,
            Gap = hung.Gap,
        };
    }

    /// <summary>Works out voltage drop on the leads as picked.</summary>
    public static VoltagePlan Settle(Brief brief, PowerPlan power, CablePlan cables) => new VoltageSums(brief, power, cables).All();

    /// <summary>Works out what leads as picked carry, and whether faults are cleared.</summary>
    public static ProtectionPlan Protect(Brief brief, PowerPlan power, CablePlan cables) =>
        new(new LeadCapacities(brief, LeadUses.Of(power, cables)).All(), new FaultWays(brief, power, cables).All(), Selectivity.Of(power));

    // A service on which nothing hangs gives nothing to speak of.
    private static IEnumerable<ServicePower> InUse(IEnumerable<ServicePower> powers) => powers.Where(power => power.Service.Loads.Count + power.Service.Allowances.Count > 0);

    private static Circuit CircuitOf(PowerNode outlet, SupplySums sums)
    {
        var chain = outlet.Chain!;
        var point = sums.PointOf(outlet);
        return new Circuit(
            outlet.Address,
            outlet.Name,
            point,
            chain,
            point.Legs[0],
            chain.Row is { } row ? new Reason.Fixed(row.At) : Reason.Derived.It);
    }
}
