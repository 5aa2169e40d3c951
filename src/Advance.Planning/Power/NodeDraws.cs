using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Gathers what draws at a place of the supply and at everything below it.</summary>
internal sealed class NodeDraws(StateDraw draws, AllowedPower allowed)
{
    private readonly Dictionary<PowerNode, IReadOnlyList<(PowerLoad Load, MainsWiring Wiring)>> hung = [];
    private readonly Dictionary<(PowerLoad, ShowState, bool), Figure<ElectricCurrent>> shared = new(ByLoad.It);

    /// <summary>Every load at a place and below, once.</summary>
    public IReadOnlyList<(PowerLoad Load, MainsWiring Wiring)> LoadsOn(PowerNode node)
    {
        if (!hung.TryGetValue(node, out var found))
        {
            hung[node] = found =
            [
                .. (node.Chain?.Loads ?? []).Select(load => (load, MainsWiring.Of(node, load))),
                .. node.Children.SelectMany(child => LoadsOn(child).Select(one => (one.Load, Wiring: Seen(one.Wiring, child, node)))),
            ];
        }

        return found;
    }

    /// <summary>What is allowed for at a place and below.</summary>
    public IReadOnlyList<PowerAllowance> AllowancesOn(PowerNode node) => node.Kind == PowerNodeKind.Upstream ? [.. node.Children.SelectMany(AllowancesOn)] : allowed.On(node).Select(one => one.Allowance).DistinctBy(one => one.Address).ToList();

    /// <summary>Everything at a place and below, in a state.</summary>
    public IReadOnlyList<WiredDraw> At(PowerNode node, ShowState state, bool atMost) => node.Kind == PowerNodeKind.Upstream ?
    [
        .. Others(node, state),
        .. node.Children.SelectMany(service => At(service, state, atMost).Select(draw => Seen(draw, service, node))),
    ]
    :
    [
        .. Others(node, state),
        .. allowed.On(node).Select(one => new WiredDraw($"allowance for {one.Allowance.Row.What}", atMost ? one.Allowance.AtMost : one.Allowance.InUse, null, new MainsWiring(MainsWiringKind.ToNeutral, [one.Line]))),
        .. LoadsOn(node).Select(one => new WiredDraw(one.Load.Name, Draw(one.Load, state, atMost), one.Load, one.Wiring)),
    ];

    // The lines of a service need not be those of what is before it: a service of one line lies on one of three, or nobody says on which.
    private static MainsWiring Seen(MainsWiring wiring, PowerNode child, PowerNode node)
    {
        if (node.Kind != PowerNodeKind.Upstream || child.Legs.Count == node.Legs.Count)
        {
            return wiring;
        }

        int[] lines = [.. child.LegsUpstream(child.Legs[0]).Select(leg => node.Legs.Index().First(one => one.Item == leg).Index)];
        return new MainsWiring(lines.Length == 1 ? MainsWiringKind.ToNeutral : MainsWiringKind.SomeLine, lines);
    }

    private static WiredDraw Seen(WiredDraw draw, PowerNode service, PowerNode node) => draw with
    {
        Wiring = Seen(draw.Wiring, service, node),
        Current = draw.Current with { RestsOn = draw.Current.RestsOn.With(Doubts.Of(service.Service?.UpstreamLine?.Doubt)) },
    };

    // Which leg the neighbours hang on nobody says.
    private IEnumerable<WiredDraw> Others(PowerNode node, ShowState state) => (node.Service?.SharedWith ?? node.Shared?.SharedWith ?? [])
        .Where(other => draws.Runs(other, state))
        .Select(other => new WiredDraw(other.What, draws.Of(other, state), null, new MainsWiring(node.Lines.Count == 1 ? MainsWiringKind.ToNeutral : MainsWiringKind.SomeLine, node.Lines)));

    private Figure<ElectricCurrent> Draw(PowerLoad load, ShowState state, bool atMost)
    {
        if (!shared.TryGetValue((load, state, atMost), out var figure))
        {
            shared[(load, state, atMost)] = figure = atMost ? draws.AtMost(load, state) : draws.InUse(load, state);
        }

        return figure;
    }

    // A load is itself; comparing all its facts would cost more than the sum.
    private sealed class ByLoad : IEqualityComparer<(PowerLoad Load, ShowState State, bool AtMost)>
    {
        public static readonly ByLoad It = new();

        public bool Equals((PowerLoad Load, ShowState State, bool AtMost) x, (PowerLoad Load, ShowState State, bool AtMost) y) =>
            ReferenceEquals(x.Load, y.Load) && x.State == y.State && x.AtMost == y.AtMost;

        public int GetHashCode((PowerLoad Load, ShowState State, bool AtMost) obj) =>
            (System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj.Load) * 31) + ((int)obj.State * 2) + (obj.AtMost ? 1 : 0);
    }
}
