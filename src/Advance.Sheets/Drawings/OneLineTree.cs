using System.Globalization;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>The supply as a tree: services, distributions, outlets, strips, loads.</summary>
internal sealed class OneLineTree(Plan plan)
{
    private readonly Speech speech = Speech.Of(plan.Brief.Company.Units);

    /// <summary>A tree for each service in use, and for each distribution that nothing feeds.</summary>
    public IReadOnlyList<OneLineNode> All() =>
    [
        .. plan.Power.ServicesInUse.Select(ServiceOf),
        .. plan.Power.Distributions.Where(point => point.FedBy is null).Select(DistributionOf),
    ];

    /// <summary>A part of the trees, so many ends from one on; what carries them is drawn again.</summary>
    public static IEnumerable<OneLineNode> Part(IEnumerable<OneLineNode> trees, int first, int count)
    {
        foreach (var tree in trees)
        {
            var ends = tree.Ends;
            if (first < ends && first + count > 0)
            {
                yield return tree with { Children = [.. Part(tree.Children, first, count)] };
            }

            first -= ends;
        }
    }

    private OneLineNode ServiceOf(SupplyPoint point)
    {
        var service = point.Service!;
        var earthing = service.Earthing.Is(out var system) ? system : "earthing not known";
        var residual = service.ResidualProtection.Is(out var trips) ? (trips.Amperes > 0 ? $"RCD {Milliamperes(trips)}" : "no RCD") : "RCD not known";
        var type = service.ResidualType is { IsKnown: true } seen ? $" type {seen.Value}" : "";
        List<string> links = service.NeutralEarthLink is { } link ? [Tagged($"N-E link {(link.Is(out var where) ? where : "not known")}", link.Doubt)] : [];
        List<string> electrodes = service.Electrode is { } rod ? [Tagged($"electrode {(rod.Is(out var ohms) ? Views.Cells.Amount(ohms.Ohms, 1).Text + " Ω" : "not known")}", rod.Doubt)] : [];
        var supply = service.Supply.Is(out var arrives) ? arrives.ToString() : "supply not known";
        return new OneLineNode(
            point.Address.Text,
            [point.Name, supply, point.Connector, .. Device(service), $"in use {Or(point.Worst.InUse.Value)} of {Or(point.Limit.Value)}", Tagged(earthing, service.Earthing.Doubt), .. links, .. electrodes, Tagged(residual + type, service.ResidualProtection.Doubt), .. Faults(service), .. Isolated(service)],
            [],
            OneLineLook.Service,
            [.. Fed(point).Select(DistributionOf)]);
    }

    private OneLineNode DistributionOf(SupplyPoint point)
    {
        var use = point.Worst;
        var hasDevices = HasDevices(point);
        return new OneLineNode(
            point.Address.Text,
            hasDevices ? [point.Name, point.Connector, $"in use {Or(use.InUse.Value)} of {Or(point.Limit.Value)}", $"at most {Or(use.AtMost.Value)}", .. Loop(point)] : [point.Name],
            LeadTo(point.Name),
            OneLineLook.Distribution,
            [.. Outlets(point)]);
    }

    private IEnumerable<SupplyPoint> Fed(SupplyPoint point) => plan.Power.Distributions.Where(other => other.FedBy?.Address == point.Address);

    private IEnumerable<OneLineNode> Outlets(SupplyPoint point)
    {
        var circuits = plan.Power.Circuits.Where(circuit => circuit.Outlet.Device == point.Device).Select(circuit => (circuit.Outlet, End: LoadOf(circuit)));
        var feeds = plan.Power.Distributions.Where(fed => fed is { FedBy.Service: null, Loom.Count: 0 } && fed.FedBy.Device == point.Device).Select(fed => (Outlet: fed.FedBy!, End: DistributionOf(fed)));
        var looms = plan.Power.Circuits.Where(circuit => circuit.Outlet.LoomEnd is not null && circuit.Outlet.FedBy!.Device == point.Device).Select(circuit => (Outlet: circuit.Outlet.FedBy!, End: LoomEndOf(circuit)));
        return circuits.Concat(feeds).Concat(looms)
            .OrderBy(one => one.Outlet.Kind)
            .ThenBy(one => one.Outlet.Number)
            .Select(one => OutletOf(one.Outlet, one.End));
    }

    private OneLineNode LoomEndOf(Circuit circuit) =>
        new(circuit.Outlet.Address.Text, [circuit.Outlet.Name], LeadTo(circuit.Outlet.Device!.Name), OneLineLook.Outlet, [LoadOf(circuit)]) { Name = circuit.Outlet.Name };

    private static OneLineNode OutletOf(SupplyPoint outlet, OneLineNode end)
    {
        var number = outlet.Kind == PowerNodeKind.Link ? "link" : $"{outlet.Number}";
        var leg = outlet.Row is { Phase.Length: > 0 } phased ? $"{number} {phased.Phase}" : number;
        return outlet.Row is { Device.Length: > 0 } row
            ? new OneLineNode(outlet.Address.Text, [leg, $"{row.Device}{Residual(outlet)}"], [], OneLineLook.Device, [end]) { Name = outlet.Name }
            : new OneLineNode(outlet.Address.Text, [leg], [], OneLineLook.Outlet, [end]) { Name = outlet.Name };
    }

    private static string Residual(SupplyPoint outlet) => outlet.Row!.Residual.Is(out var trips) && trips.Amperes > 0 ? $" {Milliamperes(trips)}" : "";

    private static string Milliamperes(UnitsNet.ElectricCurrent trips) => $"{Numbers.Plain(trips.Milliamperes, 0)} mA";

    private OneLineNode LoadOf(Circuit circuit) => new(
        circuit.Chain.Address.Text + "/end",
        [circuit.Chain.Name, string.Join(" · ", Loop(circuit.Outlet).Prepend($"{Or(circuit.Use.InUse.Value)} of {Or(circuit.Outlet.Limit.Value)}"))],
        LeadTo(circuit.Chain.First.Name),
        OneLineLook.Load,
        []);

    private static IEnumerable<string> Device(Service service) => service.Device is { } device && device.Is(out var kind)
        ? [Tagged(service.Breaks is { IsKnown: true } breaks ? $"{kind}, breaks {Numbers.Plain(breaks.Value.Kiloamperes, 1)} kA" : kind, device.Doubt)]
        : [];

    private static IEnumerable<string> Faults(Service service)
    {
        yield return service.LoopImpedance is { } loop && loop.Is(out var ohms) ? Tagged($"loop {Numbers.Plain(ohms.Ohms, 2)} Ω", loop.Doubt) : "loop not known";
        if (service.FaultCurrent is { } fault && fault.Is(out var largest))
        {
            yield return Tagged($"fault to {Numbers.Plain(largest.Kiloamperes, 1)} kA", fault.Doubt);
        }
    }

    private static IEnumerable<string> Isolated(Service service) =>
        service.IsolatedBy is { } who && who.Is(out var name) ? [Tagged($"off: {name}", who.Doubt)] : [];

    // The loop that was worked out and what a fault may draw, or else up to which loop its device opens in time.
    private IEnumerable<string> Loop(SupplyPoint point) => plan.Protection.Faults.FirstOrDefault(way => way.Point.Address == point.Address) switch
    {
        { Loop.Value: { } loop } way => [$"loop {Numbers.Plain(loop.Ohms, 2)} Ω", .. way.Largest.Value is { } most ? [$"fault to {Numbers.Plain(most.Kiloamperes, 1)} kA"] : Array.Empty<string>()],
        { Permitted.Value: { } most } => [$"loop ≤ {most.Ohms.ToString("0.00", CultureInfo.InvariantCulture)} Ω"],
        _ => [],
    };

    private IReadOnlyList<string> LeadTo(string name) => plan.Cables.Of(Address.Of("link") / "power" / name) is { Leads.Count: > 0 } run
        ? [run.Label, $"{string.Join("+", run.Leads.Select(Length))} {(speech.Units == UnitSystem.Metric ? "m" : "ft")} · {Together(run, Size)}"]
        : [];

    private static string Together(Run run, Func<Kind, string> part) => string.Join("+", run.Leads.Select(part).Distinct(StringComparer.Ordinal));

    private string Length(Kind lead) => !lead.Cable!.Length.Is(out var length) ? "?" : Numbers.Plain(speech.Units == UnitSystem.Metric ? length.Meters : length.Feet, 1);

    private static string Size(Kind lead) => lead.Cable!.Section.Replace("mm2", "mm²", StringComparison.Ordinal).Trim();

    private static bool HasDevices(SupplyPoint point) => point.DeviceKind is not { } kind || kind.Outlets.Any(row => row.Device.Length > 0);

    private string Or(UnitsNet.ElectricCurrent? current) => current is { } known ? speech.Say(known) : "not known";

    private static string Tagged(string words, Domain.Facts.Doubt? doubt) => doubt is null ? words : $"{words} TBC";
}
