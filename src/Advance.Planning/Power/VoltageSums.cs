using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Works out voltages leg by leg, from the service through feeders and outlets to the end of each chain: phasors, with the neutral as a branch of
/// its own, currents constant. Everything on and a leg alone are tried for the drop, every set of legs for a rise.
/// </summary>
internal sealed class VoltageSums
{
    private readonly PowerPlan power;
    private readonly DropSegments segments;
    private readonly IReadOnlyList<Circuit> collapsing;

    /// <summary>Ready to add.</summary>
    public VoltageSums(Brief brief, PowerPlan power, CablePlan cables)
    {
        this.power = power;
        (var steady, collapsing) = SteadyVoltages.Of(power.Circuits, (found, circuit) => Lowest(new DropSegments(brief, power, cables, found), circuit));
        segments = new DropSegments(brief, power, cables, steady);
    }

    /// <summary>All circuits, and all distributions on several legs.</summary>
    public VoltagePlan All()
    {
        var circuits = power.Circuits.Select(VoltageOf).ToList();
        var points = power.Distributions.Where(point => point.Lines.Count > 1 && point.Loom.Count == 0 && point.FedBy is not null && point.Supply is { Phases: not Phases.Single }).Select(VoltageOf).ToList();
        return new VoltagePlan(circuits, [.. circuits.SelectMany(circuit => circuit.Figures), .. points.SelectMany(point => point.Figures)]) { Points = points, Collapsing = collapsing };
    }

    private static VoltageWay WayOf(DropSegments segments, Circuit circuit) => new(circuit.Name, circuit.Outlet, [.. segments.FeedersTo(circuit.Outlet), .. segments.Chain(circuit)]);

    private static (Figure<ElectricPotential> Nominal, double? Lowest) Lowest(DropSegments segments, Circuit circuit)
    {
        var (way, nominal) = (WayOf(segments, circuit), Nominal(circuit.Outlet));
        var (frame, found) = Worst(circuit.Outlet, way, nominal, atMost: true);
        return (nominal, nominal.Value?.Volts - way.Lowered(frame, found, nominal));
    }

    private CircuitVoltage VoltageOf(Circuit circuit)
    {
        var (ways, nominal) = (WayOf(segments, circuit), Nominal(circuit.Outlet));
        var (frame, found) = Worst(circuit.Outlet, ways, nominal, atMost: false);
        var (endFrame, end) = Worst(circuit.Outlet, ways, nominal, atMost: true);
        return new CircuitVoltage(circuit, ways.Drop(frame, found, nominal), ways.AtEnd(endFrame, end, nominal))
        {
            Leg = frame.Name,
            Case = frame.Angles.Count == 1 ? "" : found.On == LineSet.All(frame.Angles.Count) ? "everything on" : $"{frame.Name} alone",
            ByHand = ways.ByHand(frame, found, nominal),
        };
    }

    private PointVoltage VoltageOf(SupplyPoint point)
    {
        var (way, nominal) = (new VoltageWay(point.Name, point, segments.FeedersTo(point)), Nominal(point));
        return new PointVoltage(point, [.. point.Lines.Select(line => LegOf(point, way, new VoltageFrame(LegOf(point, line), [line], point.Angles), nominal))]);
    }

    private static LegVoltage LegOf(SupplyPoint point, VoltageWay way, VoltageFrame frame, Figure<ElectricPotential> nominal)
    {
        var rise = LineSet.Each(frame.Angles.Count).OrderBy(on => on.Count).Select(on => new DropCase(on, AtMost: true, Rises: true)).MaxBy(found => -way.Lowered(frame, found, nominal));
        var lines = point.Angles.Count == 1 ? [] : Names(point, rise.On);
        return new LegVoltage(
            frame.Name,
            way.Drop(frame, new DropCase(LineSet.All(frame.Angles.Count), AtMost: false), nominal),
            way.Drop(frame, new DropCase(LineSet.Of(frame.Lines), AtMost: false), nominal),
            way.Rise(frame, rise, nominal),
            lines);
    }

    private static List<string> Names(SupplyPoint point, LineSet on) => [.. on.Where(point.Lines.Contains).Select(line => point.Legs[point.Lines.Index().First(one => one.Item == line).Index].Leg)];

    // Of several voltages the one that loses most, with everything on or with its own lines alone.
    private static (VoltageFrame Frame, DropCase Case) Worst(SupplyPoint outlet, VoltageWay way, Figure<ElectricPotential> nominal, bool atMost) => Frames(outlet)
        .SelectMany(frame => new[] { LineSet.All(frame.Angles.Count), LineSet.Of(frame.Lines) }.Distinct().Select(on => (frame, new DropCase(on, atMost))))
        .MaxBy(one => way.Lowered(one.frame, one.Item2, nominal));

    private static IEnumerable<VoltageFrame> Frames(SupplyPoint point) => point.Draws.Count > 0 && point.Draws.All(draw => draw.Wiring.Kind == MainsWiringKind.BetweenLines)
        ? point.Draws.Select(draw => draw.Wiring.Lines).Distinct().Take(1).Select(lines => new VoltageFrame(string.Join('-', lines.Select(line => LegOf(point, line))), lines, point.Angles))
        : point.Lines.Select(line => new VoltageFrame(LegOf(point, line), [line], point.Angles));

    private static string LegOf(SupplyPoint point, int line) => point.Legs[point.Lines.Index().First(one => one.Item == line).Index].Leg;

    private static Figure<ElectricPotential> Nominal(SupplyPoint point)
    {
        var doubts = Doubts.Of(point.Origin?.Supply.Doubt);
        return new Figure<ElectricPotential>(point.Supply?.Voltages[0].Least, doubts, new Reason.Fixed(point.Origin?.Supply.At ?? point.At));
    }
}
