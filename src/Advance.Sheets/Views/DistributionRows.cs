using System.Globalization;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>
/// The rows of a distribution's sheet: its outlets, and under an outlet that feeds a strip the outlets of that strip, which has no device and so
/// no sheet of its own: it is switched and tested here.
/// </summary>
internal sealed class DistributionRows(Plan plan, Cells cells, LeadCells leads)
{
    // A number and its unit stay on one line.
    private const char HardSpace = '\u00A0';

    /// <summary>Whether it has devices, or nothing that has a sheet feeds it.</summary>
    public static bool HasOwnSheet(SupplyPoint box) =>
        box.FedBy is not { Service: null } || box.DeviceKind is not { } kind || kind.Outlets.Any(row => row.Device.Length > 0);

    /// <summary>Every outlet, in order.</summary>
    public IEnumerable<DistributionView.Row> Of(SupplyPoint box) => Together(Of(box, isStrip: false));

    // Spare outlets of one kind that lie side by side take one row.
    private static List<DistributionView.Row> Together(IEnumerable<DistributionView.Row> rows)
    {
        var together = new List<DistributionView.Row>();
        foreach (var row in rows)
        {
            if (together.Count > 0 && row.IsSpare && together[^1] is { IsSpare: true } before && Kind(before) == Kind(row))
            {
                var first = before.Number.Text.Split('–')[0];
                var leg = before.Leg.Text.Split('–')[0];
                together[^1] = before with { Number = Cell.Of($"{first}–{row.Number.Text}"), Leg = leg == row.Leg.Text ? row.Leg : Cell.Of($"{leg}–{row.Leg.Text.TrimStart('L')}") };
                continue;
            }

            together.Add(row);
        }

        return together;
    }

    // Three lines are one range, so that the column stays narrow.
    private static string Legs(string phase) => phase.Replace("L1-L2-L3", "L1-3", StringComparison.Ordinal).Replace("-N", " N", StringComparison.Ordinal);

    private static DistributionView.Row Kind(DistributionView.Row row) => row with { Name = "", Number = Cell.Blank, Leg = Cell.Blank };

    /// <summary>The strips behind it that have no sheet of their own, further strips behind them included.</summary>
    public IEnumerable<SupplyPoint> StripsBehind(SupplyPoint box) => plan.Power.Distributions
        .Where(other => !HasOwnSheet(other) && other.FedBy is { } feed && feed.Device == box.Device)
        .SelectMany(strip => StripsBehind(strip).Prepend(strip));

    /// <summary>Numbers of the outlets that nothing hangs on.</summary>
    public IEnumerable<int> Spare(SupplyPoint box) => Outlets(box).Select(one => one.Number).Where(number => CircuitOn(box, number) is null && FedBy(box, number) is null);

    private IEnumerable<DistributionView.Row> Of(SupplyPoint box, bool isStrip, int? only = null)
    {
        foreach (var (row, number) in Outlets(box).Where(one => only is null || one.Number == only))
        {
            var fed = FedBy(box, number);
            var carries = RowOf(box, row, number, fed, isStrip);
            if (!isStrip || fed is not null || CircuitOn(box, number) is not null)
            {
                yield return carries;
            }

            foreach (var line in fed is null || HasOwnSheet(fed) ? [] : Of(fed, isStrip: true, OnLoom(fed, number)))
            {
                yield return Shorter(line, carries);
            }
        }

        foreach (var fed in plan.Power.Distributions.Where(other => other.FedBy is { Kind: PowerNodeKind.Link } link && link.Device == box.Device))
        {
            yield return Feeding(Carrying(new DistributionView.Row(fed.FedBy!.Name, isStrip) with { Number = Cell.Of("link"), Outlet = Cell.Of(fed.FedBy.Connector) }, fed.FedBy), fed, LinkTo(fed));
        }
    }

    // What is the same as of the outlet that feeds the strip is not said again.
    private static DistributionView.Row Shorter(DistributionView.Row line, DistributionView.Row carries) => line with
    {
        Size = line.Size == carries.Size ? Cell.Blank : line.Size,
        Loop = line.Loop == carries.Loop ? Cell.Blank : line.Loop,
    };

    private static IEnumerable<(Domain.Stocks.OutletRow Row, int Number)> Outlets(SupplyPoint box) =>
        (box.DeviceKind?.Outlets ?? []).SelectMany(row => Enumerable.Range(row.Numbers.First, row.Numbers.Count).Select(number => (row, number)));

    private DistributionView.Row RowOf(SupplyPoint box, Domain.Stocks.OutletRow row, int number, SupplyPoint? fed, bool isStrip)
    {
        var line = new DistributionView.Row(string.Create(CultureInfo.InvariantCulture, $"{box.Name} outlet {number}"), isStrip)
        {
            Number = Cell.Number(number) with { Strong = !isStrip },
            Outlet = Cell.Of(row.Connector),
            Leg = Cell.Of(Legs(row.Phase)),
            Device = Cell.Of(row.Device),
            Residual = row.Residual.IsKnown && !isStrip ? ResidualOf(row) : Cell.Blank,
        };
        var link = plan.Links.FirstOrDefault(link => link.Carries == LeadCells.Mains && link.From.Port.Device == box.Name && link.From.Port.Number == number);
        var circuit = CircuitOn(box, number);
        return fed is not null ? Feeding(Carrying(line, fed.Feeds.First(outlet => outlet.Kind == PowerNodeKind.Link || outlet.Number == number)), fed, link)
            : circuit is not null ? Serving(Carrying(line, circuit.Outlet), circuit, link)
            : line with { Feeds = Cell.Of("spare"), IsSpare = true };
    }

    // Behind the rating its type, and S for one that waits, as it stands on the device: 300 A S.
    private static Cell ResidualOf(Domain.Stocks.OutletRow row)
    {
        var cell = Cells.Amount(row.Residual.Value.Milliamperes, 0);
        var type = row.ResidualType is { IsKnown: true } said ? " " + said.Value : "";
        var waits = row.ResidualDelay is { IsKnown: true } delay && delay.Value.Seconds > 0 ? " S" : "";
        return cell with { Text = cell.Text + type + waits };
    }

    // Of the end of a loom, only the outlet that this one feeds.
    private static int? OnLoom(SupplyPoint end, int number) => end.Loom.Count == 0 ? null
        : Outlets(end).Select(one => one.Number).Order().ElementAt(end.Loom.Index().First(one => one.Item.Number == number).Index);

    private Circuit? CircuitOn(SupplyPoint box, int number) =>
        plan.Power.Circuits.FirstOrDefault(circuit => circuit.Outlet.Device == box.Device && circuit.Outlet.Number == number);

    private SupplyPoint? FedBy(SupplyPoint box, int number) =>
        plan.Power.Distributions.FirstOrDefault(other => other.Feeds.Any(outlet => outlet.Kind == PowerNodeKind.Outlet && outlet.Device == box.Device && outlet.Number == number));

    private DistributionView.Row Carrying(DistributionView.Row line, SupplyPoint outlet) => line with
    {
        InUse = cells.Amount(outlet.Worst.InUse, Amperes, 1) with { Strong = !line.IsStrip },
        AtMost = cells.Amount(outlet.Worst.AtMost, Amperes, 1),
        Share = cells.Amount(outlet.Worst.OfLimit, ratio => ratio.Percent, 0),
        Used = outlet.Worst.OfLimit.Value is { } share && !line.IsStrip ? DistributionViews.Share(share.DecimalFractions) : "",
        Leakage = cells.Amount(outlet.Leakage, current => current.Milliamperes, 1),
        On = !line.IsStrip && plan.Power.StepOf(outlet) is { } step ? Cell.Number(step.Number) : Cell.Blank,
    };

    private DistributionView.Row Feeding(DistributionView.Row line, SupplyPoint fed, Link? link) => line with
    {
        Feeds = Cell.Of(fed.Name) with { Strong = true },
        Chain = HasOwnSheet(fed) ? Cell.Of("has a sheet of its own") : Cell.Blank,
        Where = plan.Power.Things.FirstOrDefault(thing => thing.Address == fed.Address)?.Spot is { } spot ? cells.Of(spot) with { Tbc = fed.Device?.Place?.Doubt is null ? null : "" } : Cell.Blank,
        Lead = leads.Lead(link),
        Size = SizeOf(link),
        Loop = LoopOf(fed),
    };

    private DistributionView.Row Serving(DistributionView.Row line, Circuit circuit, Link? link)
    {
        var voltage = plan.Voltage.Circuits.FirstOrDefault(one => one.Circuit.Address == circuit.Address);
        return line with
        {
            Feeds = Cell.Of(circuit.Chain.Name) with { Strong = !line.IsStrip },
            Chain = circuit.Chain.Loads.Count > 1 && circuit.Chain.Loads.Any(load => !circuit.Chain.Name.Contains(load.Name, StringComparison.Ordinal)) ? Cell.Of(ChainOf(circuit.Chain)) : Cell.Blank,
            Where = circuit.Chain.First.Spot is { } spot ? cells.Of(spot) : Cell.Blank,
            Lead = leads.Lead(link),
            Size = SizeOf(link),
            Loop = LoopOf(circuit.Outlet),
            Drop = voltage is null ? Cell.Blank : cells.Amount(voltage.Drop, ratio => ratio.Percent, 1),
            AtEnd = voltage is null ? Cell.Blank : cells.Amount(voltage.AtEnd, potential => potential.Volts, 1),
        };
    }

    // Fixture 17 → Fixture 18 is fixtures 17 → 18.
    private static string ChainOf(PowerChain chain)
    {
        const string One = "Fixture ";
        var names = chain.Loads.Select(load => Short(load, chain)).ToList();
        return names.TrueForAll(name => name.StartsWith(One, StringComparison.Ordinal))
            ? $"fixtures {string.Join(" → ", names.Select(name => name[One.Length..]))}"
            : string.Join(" → ", names);
    }

    // Main SR 1 of Main SR is 1; Fixture 5, LX SL of LX SL is Fixture 5.
    private static string Short(PowerLoad load, PowerChain chain)
    {
        var name = load.Name.Replace($", {chain.Name}", "", StringComparison.Ordinal);
        return name.StartsWith(chain.Name + " ", StringComparison.Ordinal) ? name[(chain.Name.Length + 1)..] : name;
    }

    private Link? LinkTo(SupplyPoint fed) => plan.Links.FirstOrDefault(link => link.Carries == LeadCells.Mains && link.To.Port.Device == fed.Name);

    // What a lead carries where it lies stands behind its size.
    private Cell SizeOf(Link? link) =>
        Cell.Of(string.Join(", ", (link is null ? null : plan.Cables.Of(link.Address)) is { } run ? run.Leads.Select(lead => SizeOf(run, lead)).Where(section => section.Length > 0).Distinct(StringComparer.Ordinal) : []));

    private string SizeOf(Run run, Domain.Stocks.Kind lead)
    {
        var size = Said(lead.Cable?.Section ?? "");
        var carries = plan.Protection.Leads.FirstOrDefault(one => one.Run == run && one.Lead.Id == lead.Id)?.Carries.Value;
        return size.Length == 0 || carries is not { } amperes ? size : $"{size} · {amperes.Amperes.ToString("0", CultureInfo.InvariantCulture)}{HardSpace}A";
    }

    private Cell LoopOf(SupplyPoint point) => plan.Protection.Faults.FirstOrDefault(way => way.Point.Address == point.Address) switch
    {
        null => Cell.Blank,
        { Loop.Value: not null } way => cells.Amount(way.Loop, loop => loop.Ohms, 2),
        { Permitted.Value: { } most } => Cell.Of($"≤{HardSpace}{most.Ohms.ToString("0.00", CultureInfo.InvariantCulture)}"),
        _ => Cell.Blank,
    };

    private static string Said(string section) => section.Replace("mm2", "mm²", StringComparison.Ordinal).Replace(' ', HardSpace);

    private static double Amperes(UnitsNet.ElectricCurrent current) => current.Amperes;
}
