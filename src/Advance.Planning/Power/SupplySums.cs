using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Adds up what every place of the supply carries, in every show state, and keeps the worst.</summary>
internal sealed class SupplySums
{
    private readonly Dictionary<PowerNode, SupplyPoint> points = [];
    private readonly NodeDraws gather;
    private readonly NeutralSums neutrals;
    private readonly NeutralLostSums lost;

    /// <summary>Ready to add.</summary>
    public SupplySums(StateDraw draws, AllowedPower allowed, Policies policies)
    {
        gather = new NodeDraws(draws, allowed);
        neutrals = new NeutralSums(gather, policies);
        lost = new NeutralLostSums(neutrals);
    }

    /// <summary>The point of a node, with those above it.</summary>
    public SupplyPoint PointOf(PowerNode node)
    {
        if (!points.TryGetValue(node, out var point))
        {
            points[node] = point = Make(node, node.Parent is { } parent ? PointOf(parent) : null);
        }

        return point;
    }

    private SupplyPoint Make(PowerNode node, SupplyPoint? parent)
    {
        List<LegUse> legs = [.. LegsOf(node)];
        return new SupplyPoint(node.Address, node.Name, node.Kind, node.Connector, node.Limit, legs, parent, AtOf(node))
        {
            Service = node.Service,
            Shared = node.Shared,
            Device = node.Device,
            DeviceKind = node.DeviceKind,
            Row = node.Row,
            Number = node.Number,
            Loom = [.. node.Loom.Select(PointOf)],
            Supply = node.Supply,
            Lines = node.Lines,
            Angles = node.Angles,
            Draws = [.. gather.LoadsOn(node).Select(one => new LoadDraw(one.Load, one.Wiring))],
            Loads = [.. gather.LoadsOn(node).Select(one => one.Load)],
            Allowances = gather.AllowancesOn(node),
            Neutral = HasNeutral(node) ? NeutralOf(node, legs) : null,
            NeutralLost = HasNeutral(node) ? lost.Of(node) : null,
        };
    }

    private static Mark AtOf(PowerNode node) => node.Device?.At ?? node.Service?.At ?? node.Shared?.At ?? Mark.Nowhere;

    // One leg's neutral carries what the leg does; without a neutral there is none; without a load it carries nothing.
    private bool HasNeutral(PowerNode node) => node.Lines.Count > 1 && !node.IsBetweenLines && gather.LoadsOn(node).Count + gather.AllowancesOn(node).Count > 0;

    private NeutralUse NeutralOf(PowerNode node, List<LegUse> legs) => new(neutrals.Of(node, atMost: false), neutrals.Of(node, atMost: true))
    {
        LargestLine = legs.FirstOrDefault(leg => leg.InUse.Value is null)?.InUse ?? legs.MaxBy(leg => leg.InUse.Value!.Value.Amperes)!.InUse,
    };

    private IEnumerable<LegUse> LegsOf(PowerNode node)
    {
        var inUse = StateShares.States.Select(state => (State: state, Draws: gather.At(node, state, atMost: false))).ToList();
        var atMost = StateShares.States.Select(state => (State: state, Draws: gather.At(node, state, atMost: true))).ToList();
        return node.Lines.Select((line, index) => UseOf(node, line, node.Legs[index], inUse, atMost));
    }

    private static LegUse UseOf(PowerNode node, int line, string leg, List<(ShowState State, IReadOnlyList<WiredDraw> Draws)> inUse, List<(ShowState State, IReadOnlyList<WiredDraw> Draws)> atMost)
    {
        var used = inUse.ConvertAll(one => (one.State, Sum: SumOf(node, line, leg, one.State, one.Draws)));
        var worst = used.Find(one => one.Sum.Value is null);
        if (worst.Sum is null)
        {
            // Of states alike the first stands.
            worst = used.Aggregate((most, one) => one.Sum.Value!.Value.Amperes > most.Sum.Value!.Value.Amperes ? one : most);
        }

        var most = atMost.ConvertAll(one => SumOf(node, line, leg, one.State, one.Draws));
        return new LegUse(leg, worst.Sum, worst.State, most.Find(sum => sum.Value is null) ?? most.MaxBy(sum => sum.Value!.Value.Amperes)!, [.. used.Select(one => one.Sum)])
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

    private static Figure<ElectricCurrent> SumOf(PowerNode node, int line, string leg, ShowState state, IReadOnlyList<WiredDraw> draws)
    {
        var angles = node.Angles;
        return LegSum.Of($"{NameOf(node, leg)}, {StateShares.Word(state)}", [.. draws.Where(draw => draw.Wiring.Lines.Contains(line)).Select(draw => LegDraw.Of(draw, angles, line))]);
    }
}
