using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Puts the question of outlets in whole numbers, and reads the answer back.</summary>
internal sealed class CircuitAssembly
{
    // An adapter more is worth so many centimetres of lead.
    private const int Adapter = 100;

    private readonly SupplyTree tree;
    private readonly IReadOnlyList<PowerChain> chains;
    private readonly StateDraw draws;
    private readonly AllowedPower allowed;
    private readonly Mating mating;
    private readonly Routes routes;
    private readonly Choices earlier;
    private readonly List<List<PowerNode>> groups;
    private readonly List<(PowerNode Node, string Leg)> nodes;
    private readonly List<PowerNode> soundSupplies;
    private readonly bool isNec;
    private readonly List<(PowerNode Node, string? Leg, CircuitGuard Guard)> guards;

    /// <summary>Gathers what is free.</summary>
    public CircuitAssembly(SupplyTree tree, IReadOnlyList<PowerChain> chains, StateDraw draws, AllowedPower allowed, Mating mating, Routes routes, Choices earlier)
    {
        this.tree = tree;
        this.chains = [.. chains.OrderBy(chain => chain.Row?.Number is { IsKnown: true } ? 0 : 1).ThenBy(Importance).ThenBy(chain => chain.First.Spot?.X ?? double.MaxValue).ThenBy(chain => chain.Address)];
        this.draws = draws;
        this.allowed = allowed;
        this.mating = mating;
        this.routes = routes;
        this.earlier = earlier;
        var numbered = chains.Select(chain => chain.Row).OfType<CircuitRow>().Where(row => row.Number is { IsKnown: true }).Select(row => (row.Distribution.Trim().ToUpperInvariant(), row.Number!.Value.Value)).ToHashSet();
        groups =
        [
            .. tree.Outlets.Where(outlet => outlet.Children.Count == 0)
                .GroupBy(outlet => (outlet.Device!.Name, outlet.Connector, Leg: string.Join('+', outlet.Legs), outlet.Limit.Value, Own: numbered.Contains((outlet.Device.Name.ToUpperInvariant(), outlet.Number)) ? outlet.Number : 0))
                .Select(group => group.ToList()),
        ];
        nodes = [.. tree.Nodes.Where(node => node.Children.Count > 0).SelectMany(node => node.Legs.Select(leg => (node, leg)))];
        guards = [.. nodes.Select(place => place.Node).Distinct().SelectMany(GuardsOf)];
        isNec = tree.Services.Count > 0 && tree.Services.All(service => NorthAmerica.Has(service.Service!));
        soundSupplies = [.. chains.Where(chain => EarthOf(chain.First) == CircuitEarth.Sound).SelectMany(FixedSupplies).Distinct()];
    }

    /// <summary>The address under which the choice of an outlet is remembered.</summary>
    public static Address AddressOf(PowerChain chain) => Address.Of("power") / "feed" / chain.Name;

    /// <summary>Solves it and hangs each chain on its outlet.</summary>
    public CircuitHanging Hang()
    {
        var problem = new CircuitProblem([.. chains.Select(WishOf)], [.. groups.Select(GroupOf)], [.. nodes.Select(NodeOf)], StateShares.States.Count) { Guards = [.. guards.Select(one => one.Guard)] };
        var answer = CircuitSolver.Solve(problem);
        var free = groups.Select(group => group.ToList()).ToList();
        var taken = new PowerNode?[chains.Count];
        foreach (var isBefore in new[] { true, false })
        {
            for (var index = 0; index < chains.Count; index++)
            {
                if (taken[index] is null && answer.Taken[index] is { } option)
                {
                    taken[index] = Take(free[option.Group], chains[index], isBefore);
                }
            }
        }

        return new CircuitHanging([.. chains.Where((_, index) => taken[index] is null).Select(chain => new UnfedChain(chain, ReasonOf(chain)))], [.. GivenUp(taken)], answer.IsProven, answer.Gap)
        {
            Costly = CostlyOf(problem, answer),
            ToFree = [.. CircuitPins.ToFree(problem, answer).Select(wish => chains[wish].Row!)],
        };
    }

    private CostlyCircuits? CostlyOf(CircuitProblem problem, CircuitAnswer answer)
    {
        var (pins, use) = CircuitPins.Costly(problem, answer);
        return pins.Count == 0 ? null : new CostlyCircuits([.. pins.Select(wish => chains[wish].Row!).OrderBy(row => row.At.Line)], PerMille(answer.Score.Use + CircuitScore.Comfortable), PerMille(use));
    }

    private static Ratio PerMille(int value) => Ratio.FromPercent(value / 10.0);

    // What is hung first gets the first outlets, so that a wedge more moves no stack.
    private static int Importance(PowerChain chain) => chain.First switch
    {
        { Use: PowerUse.Loudspeaker } => 0,
        { Use: PowerUse.Lighting } load when IsFixture(load) => 1,
        { Use: PowerUse.Sound } => 2,
        { Use: PowerUse.Backline } => 3,
        { Use: PowerUse.Lighting } => 4,
        { Use: PowerUse.Monitor } => 5,
        _ => 6,
    };

    private static bool IsFixture(PowerLoad load) => load.Piece?.Kind?.Role == Role.Fixture;

    private PowerNode? Take(List<PowerNode> free, PowerChain chain, bool isBefore)
    {
        var outlet = isBefore ? free.Find(node => node.Port.ToString() == earlier.Of(AddressOf(chain))) : free.FirstOrDefault();
        if (outlet is not null)
        {
            outlet.Chain = chain;
            free.Remove(outlet);
        }

        return outlet;
    }

    private IEnumerable<GivenUpCircuit> GivenUp(PowerNode?[] taken)
    {
        for (var index = 0; index < chains.Count; index++)
        {
            if (chains[index].Row is { } row && (taken[index] is not { } outlet || !Keeps(outlet, row)))
            {
                yield return new GivenUpCircuit(row, tree.Distribution(row.Distribution) is null ? GivenUpReason.NoDistribution : GivenUpReason.NoOutlet, taken[index]?.Name);
            }
        }
    }

    private static bool Keeps(PowerNode outlet, CircuitRow row) =>
        string.Equals(outlet.Device!.Name, row.Distribution.Trim(), StringComparison.OrdinalIgnoreCase)
        && (row.Number is not { IsKnown: true } number || number.Value == outlet.Number);

    // Where sound was fixed by hand, all of it stays: it is joined by copper.
    private IEnumerable<PowerNode> FixedSupplies(PowerChain chain) =>
        chain.Row is { } row ? groups.Select(group => group[0]).Where(outlet => Keeps(outlet, row) && Fits(outlet, chain)).Select(outlet => outlet.Root) : [];

    private bool IsAllowed(PowerNode outlet, PowerChain chain) => Fits(outlet, chain)
        && (chain.Row is not null || EarthOf(chain.First) != CircuitEarth.Sound || soundSupplies.Count == 0 || soundSupplies.Contains(outlet.Root));

    private UnfedReason ReasonOf(PowerChain chain)
    {
        var takes = Takes(chain);
        var mates = tree.Outlets.Where(outlet => mating.Bridges(outlet.Connector, chain.First.Inlet) is not null).ToList();
        var volts = mates.Where(outlet => VoltageFit.Volts(outlet.Supply, takes) != false).ToList();
        return mates.Count == 0 ? UnfedReason.Connector
            : volts.Count == 0 ? UnfedReason.Voltage
            : volts.All(outlet => VoltageFit.Hertz(outlet.Supply, takes) == false) ? UnfedReason.Frequency
            : UnfedReason.NoneLeft;
    }

    private static Supply? Takes(PowerChain chain) => chain.First.Takes is { } given && given.Is(out var supply) ? supply : null;

    private CircuitWish WishOf(PowerChain chain)
    {
        var before = earlier.Of(AddressOf(chain)) is { } port ? groups.FindIndex(group => group.Exists(outlet => outlet.Port.ToString() == port)) : -1;
        var options = Enumerable.Range(0, groups.Count)
            .Where(group => IsAllowed(groups[group][0], chain))
            .Select(group => new CircuitOption(group, Distance(groups[group][0], chain), chain.Row is { } row && Keeps(groups[group][0], row)))
            .ToList();
        return new CircuitWish(
            chain.Loads.Count, [.. StateShares.States.Select(state => chain.Loads.Sum(load => CircuitDevice.Up(draws.InUse(load, state), IsLong(load) ? ContinuousLoad.Factor : 1)))], EarthOf(chain.First), options, chain.Row is not null, before < 0 ? null : before)
        {
            Leakage = CircuitDevice.LeakageOf(chain),
            Inrush = CircuitDevice.InrushOf(chain),
        };
    }

    // Where the NEC holds, what runs for three hours counts a quarter more, so that no outlet is chosen that its rule then refuses.
    private bool IsLong(PowerLoad load) => isNec && load.Continuous is not { IsKnown: true, Value: false };

    // The desk that runs the lights may stand beside the one that runs the sound.
    private static CircuitEarth EarthOf(PowerLoad load) => load.Use switch
    {
        PowerUse.Loudspeaker or PowerUse.Monitor or PowerUse.Backline or PowerUse.Sound => CircuitEarth.Sound,
        PowerUse.Lighting when IsFixture(load) => CircuitEarth.Light,
        _ => CircuitEarth.Free,
    };

    // What is unknown about a thing keeps it from nothing; a rule asks for it.
    private bool Fits(PowerNode outlet, PowerChain chain)
    {
        var takes = Takes(chain);
        return mating.Bridges(outlet.Connector, chain.First.Inlet) is not null && VoltageFit.Volts(outlet.Supply, takes) != false && VoltageFit.Hertz(outlet.Supply, takes) != false;
    }

    private int Distance(PowerNode outlet, PowerChain chain)
    {
        var way = outlet.Spot is { } from && chain.First.Spot is { } to ? (int)Math.Round(routes.Path(from, to).Centimeters, MidpointRounding.AwayFromZero) : 0;
        return way + (Adapter * (mating.Bridges(outlet.Connector, chain.First.Inlet) ?? 0));
    }

    private CircuitGroup GroupOf(List<PowerNode> outlets)
    {
        var first = outlets[0];
        var carriers = first.Upwards.Skip(1).SelectMany(node => first.Legs.Select(leg => (node, leg)))
            .Concat(first.Root is { Upstream: { } shared } root ? first.Legs.SelectMany(root.LegsUpstream).Distinct().Select(leg => (shared, leg)) : [])
            .Select(place => nodes.IndexOf(place)).Where(index => index >= 0).ToList();
        var above = first.Upwards.ToHashSet();
        return new CircuitGroup(outlets.Count, CircuitDevice.Down(first.Limit), carriers, tree.Services.Concat(tree.Distributions).ToList().IndexOf(first.Root))
        {
            Leakage = CircuitDevice.LeakageOf(first),
            Inrush = CircuitDevice.InrushOf(first),
            Guards = [.. Enumerable.Range(0, guards.Count).Where(index => above.Contains(guards[index].Node) && (guards[index].Leg is not { } leg || first.Legs.Contains(leg)))],
            Box = first.Row is { Device.Length: > 0 } && tree.Distributions.ToList().IndexOf(first.Parent!) is var box and >= 0 ? box : null,
        };
    }

    // Leakage of all legs goes through one residual-current device; each pole of a breaker sees the inrush of its own leg.
    private static IEnumerable<(PowerNode Node, string? Leg, CircuitGuard Guard)> GuardsOf(PowerNode node) =>
        (CircuitDevice.LeakageOf(node) is { } leakage ? new[] { (node, (string?)null, new CircuitGuard(leakage, IsLeakage: true)) } : [])
        .Concat(CircuitDevice.InrushOf(node) is { } inrush ? node.Legs.Select(leg => (node, (string?)leg, new CircuitGuard(inrush, IsLeakage: false))) : []);

    private static IEnumerable<OtherLoad> OthersOn((PowerNode Node, string Leg) place) => place.Node.Kind == PowerNodeKind.Upstream
        ? place.Node.Shared!.SharedWith.Concat(place.Node.Children.Where(service => service.Legs.Any(leg => service.LegsUpstream(leg).Contains(place.Leg))).SelectMany(service => service.Service!.SharedWith))
        : place.Node.Service?.SharedWith ?? [];

    private static bool IsOn(PowerNode node, (PowerNode Node, string Leg) place) => place.Node.Kind == PowerNodeKind.Upstream
        ? node.Root.Upstream == place.Node && node.Legs.SelectMany(node.Root.LegsUpstream).Contains(place.Leg)
        : node.Upwards.Contains(place.Node) && node.Legs.Contains(place.Leg);

    private CircuitNode NodeOf((PowerNode Node, string Leg) place)
    {
        var others = OthersOn(place).ToList();
        List<PowerLoad> loads = [.. chains.SelectMany(chain => chain.Loads)];
        var left = tree.Nodes.Where(node => IsOn(node, place)).Sum(node => allowed.Before(node, loads).Sum(one => CircuitDevice.Up(one)));
        return new CircuitNode(
            CircuitDevice.Down(place.Node.Limit),
            [.. StateShares.States.Select(state => left + others.Where(other => draws.Runs(other, state)).Sum(other => CircuitDevice.Up(Figure.From(other.InUse))))],
            place.Node.Legs.Count > 1 ? nodes.FindIndex(other => other.Node == place.Node) : null);
    }
}
