using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Adds up what every place of the supply carries, in every show state, and keeps the worst.</summary>
internal sealed class SupplySums(StateDraw draws, AllowedPower allowed)
{
    private readonly Dictionary<PowerNode, SupplyPoint> points = [];

    /// <summary>The point of a node, with those above it.</summary>
    public SupplyPoint PointOf(PowerNode node)
    {
        if (!points.TryGetValue(node, out var point))
        {
            points[node] = point = Make(node, node.Parent is { } parent ? PointOf(parent) : null);
        }

        return point;
    }

    private SupplyPoint Make(PowerNode node, SupplyPoint? parent) => new(
        node.Address, node.Name, node.Kind, node.Connector, node.Limit, [.. node.Legs.Select(leg => UseOf(node, leg))], parent, AtOf(node))
    {
        Service = node.Service,
        Device = node.Device,
        DeviceKind = node.DeviceKind,
        Row = node.Row,
        Number = node.Number,
        Supply = node.Supply,
        Loads = [.. node.Legs.SelectMany(leg => LoadsOn(node, leg)).Distinct()],
        Allowances = [.. node.Legs.SelectMany(leg => allowed.On(node, leg)).DistinctBy(one => one.Address)],
    };

    private static Mark AtOf(PowerNode node) => node.Device?.At ?? node.Service?.At ?? Mark.Nowhere;

    private LegUse UseOf(PowerNode node, string leg)
    {
        var inUse = StateShares.States.Select(state => (State: state, Sum: SumOf(node, leg, state, draws.InUse, one => one.InUse))).ToList();
        var worst = inUse.FirstOrDefault(one => one.Sum.Value is null);
        if (worst.Sum is null)
        {
            // Of states alike the first stands.
            worst = inUse.Aggregate((most, one) => one.Sum.Value!.Value.Amperes > most.Sum.Value!.Value.Amperes ? one : most);
        }

        var atMost = StateShares.States.Select(state => SumOf(node, leg, state, draws.AtMost, one => one.AtMost)).ToList();
        return new LegUse(leg, worst.Sum, worst.State, atMost.Find(sum => sum.Value is null) ?? atMost.MaxBy(sum => sum.Value!.Value.Amperes)!, [.. inUse.Select(one => one.Sum)])
        {
            OfLimit = ShareOf(node, leg, worst.Sum),
        };
    }

    private static Figure<Ratio> ShareOf(PowerNode node, string leg, Figure<ElectricCurrent> inUse) =>
        Sum.Of($"{NameOf(node, leg)}, share of what it may carry", "u = 100 · I / n", Publication.Arithmetic)
            .Put("I", inUse)
            .Put("n", node.Limit.Value is { Amperes: > 0 } ? node.Limit : node.Limit with { Value = null })
            .Gives((current, limit) => Ratio.FromPercent(100 * current.Amperes / limit.Amperes));

    private static string NameOf(PowerNode node, string leg) => leg.Length > 0 ? $"{node.Name} {leg}" : node.Name;

    private Figure<ElectricCurrent> SumOf(
        PowerNode node, string leg, ShowState state, Func<PowerLoad, ShowState, Figure<ElectricCurrent>> draw, Func<PowerAllowance, Figure<ElectricCurrent>> left)
    {
        var loads = LoadsOn(node, leg).Select(load => LegDraw.Of(load, draw(load, state)));
        var others = OthersOn(node).Where(other => draws.Runs(other, state)).Select(other => LegDraw.Plain(draws.Of(other, state)));
        return LegSum.Of($"{NameOf(node, leg)}, {StateShares.Word(state)}", [.. others, .. allowed.On(node, leg).Select(one => LegDraw.Plain(left(one))), .. loads]);
    }

    private static IEnumerable<PowerLoad> LoadsOn(PowerNode node, string leg) =>
        (node.Chain?.Loads ?? []).Concat(node.Children.Where(child => child.Legs.Contains(leg)).SelectMany(child => LoadsOn(child, leg)));

    // Which leg the neighbours hang on nobody says: they count on each.
    private static IReadOnlyList<Domain.Venues.OtherLoad> OthersOn(PowerNode node) => node.Service?.SharedWith ?? [];
}
