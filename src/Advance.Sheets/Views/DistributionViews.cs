using System.Globalization;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the sheets of distributions.</summary>
internal sealed class DistributionViews
{
    private readonly Plan plan;
    private readonly Speech speech;
    private readonly Cells cells;
    private readonly LeadCells leads;
    private readonly SupplyFacts facts;

    private DistributionViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
        leads = new LeadCells(plan, speech);
        facts = new SupplyFacts(plan);
    }

    /// <summary>One for each distribution; null where there is none.</summary>
    public static DistributionsView? Of(Plan plan)
    {
        var makes = new DistributionViews(plan);
        return plan.Power.Distributions.Count > 0 ? new DistributionsView([.. plan.Power.Distributions.Select(makes.ViewOf)]) : null;
    }

    private DistributionView ViewOf(SupplyPoint box)
    {
        var outlets = box.DeviceKind?.Outlets ?? [];
        return new DistributionView(
            $"distribution-{Slug.Of(box.Name)}",
            box.Name,
            [.. Facts(box)],
            [.. outlets.SelectMany(row => Enumerable.Range(row.Numbers.First, row.Numbers.Count).Select(number => RowOf(box, row, number)))],
            [.. Totals(box, outlets)],
            FindingViews.Heavy(plan, finding => box.Upwards.Any(point => FindingViews.IsAt(finding, point.Address.Text))),
            Share(plan.Brief.Company.Policies.CircuitUse / 100),
            outlets.Any(row => row.Device.Length > 0),
            plan.Power.ServicesInUse.Skip(1).Any(),
            Cells.Head(plan.Power.RestsOn.With(plan.Cables.RestsOn)));
    }

    private IEnumerable<PairView> Facts(SupplyPoint box)
    {
        yield return new PairView("Stands", box.Device is { } device ? cells.Of(device.Place) : Cell.Blank);
        yield return new PairView("Fed from", box.FedBy is { } feed ? Cell.Of(feed.Name) : new Cell("nothing") { Verdict = Paper.Tree.Verdict.Fails });
        yield return new PairView("Feeder", leads.Lead(plan.Links.FirstOrDefault(link => link.Carries == LeadCells.Mains && link.To.Port.Device == box.Name)));
        foreach (var fact in box.Origin is { } service ? facts.Of(service) : [])
        {
            yield return fact;
        }

        var source = box.Upwards.Last();
        foreach (var use in source.Service is null ? [] : source.Legs)
        {
            yield return new PairView(use.Leg.Length > 0 ? $"{source.Name} {use.Leg}, with all" : $"{source.Name}, with all", cells.WithUnit(use.InUse) with { Strong = true });
        }
    }

    private DistributionView.Row RowOf(SupplyPoint box, OutletRow row, int number)
    {
        var circuit = plan.Power.Circuits.FirstOrDefault(circuit => circuit.Outlet.Device == box.Device && circuit.Outlet.Number == number);
        var feeder = plan.Power.Feeders.FirstOrDefault(point => point.Device == box.Device && point.Number == number);
        var fed = plan.Power.Distributions.FirstOrDefault(other => feeder is not null && other.FedBy?.Address == feeder.Address);
        var voltage = plan.Voltage.Circuits.FirstOrDefault(one => one.Circuit.Address == circuit?.Address);
        var link = plan.Links.FirstOrDefault(link => link.Carries == LeadCells.Mains && link.From.Port.Device == box.Name && link.From.Port.Number == number);
        var point = circuit?.Outlet ?? feeder;
        var use = point?.Worst;
        return new DistributionView.Row(
            Cell.Number(number) with { Strong = true },
            Cell.Of(row.Connector),
            Cell.Of(row.Device),
            row.Residual.IsKnown ? Cells.Amount(row.Residual.Value.Milliamperes, 0) : Cell.Blank,
            circuit is not null ? Cell.Of(circuit.Chain.Name) with { Strong = true } : fed is not null ? Cell.Of(fed.Name) with { Strong = true } : Cell.Of("spare"),
            circuit is { Chain.Loads.Count: > 1 } chained ? Cell.Of(string.Join(" → ", chained.Chain.Loads.Select(load => load.Name))) : Cell.Blank,
            WhereOf(circuit, fed),
            leads.Lead(link),
            SectionOf(link),
            use is null ? Cell.Blank : cells.Amount(use.InUse, Amperes, 1) with { Strong = true },
            use is null ? Cell.Blank : cells.Amount(use.AtMost, Amperes, 1),
            use is null ? Cell.Blank : cells.Amount(use.OfLimit, ratio => ratio.Percent, 0),
            use?.OfLimit.Value is { } share ? Share(share.DecimalFractions) : "",
            voltage is null ? Cell.Blank : cells.Amount(voltage.Drop, ratio => ratio.Percent, 1),
            voltage is null ? Cell.Blank : cells.Amount(voltage.AtEnd, potential => potential.Volts, 1),
            point is null ? Cell.Blank : cells.Amount(point.Leakage, current => current.Milliamperes, 1),
            point is not null && plan.Power.StepOf(point) is { } step ? Cell.Number(step.Number) : Cell.Blank);
    }

    private Cell WhereOf(Circuit? circuit, SupplyPoint? fed) =>
        fed?.Device is { } device ? cells.Of(device.Place)
        : circuit?.Chain.First.Spot is { } spot ? Cell.Of(PlaceWords.Of(new Domain.Places.Place.AtPoint(UnitsNet.Length.FromMeters(spot.X), UnitsNet.Length.FromMeters(spot.Y), Z: null), speech))
        : Cell.Blank;

    private Cell SectionOf(Link? link) =>
        Cell.Of(string.Join(", ", (link is null ? null : plan.Cables.Of(link.Address))?.Leads.Select(lead => lead.Cable?.Section ?? "").Where(section => section.Length > 0).Distinct(StringComparer.Ordinal) ?? []));

    private IEnumerable<PairView> Totals(SupplyPoint box, IReadOnlyList<OutletRow> outlets)
    {
        foreach (var use in box.Legs)
        {
            var name = use.Leg.Length > 0 ? $"{use.Leg} in use" : "In use";
            yield return new PairView(name, cells.WithUnit(use.InUse) with { Strong = true });
            yield return new PairView(use.Leg.Length > 0 ? $"{use.Leg} at most" : "At most", cells.WithUnit(use.AtMost));
        }

        yield return new PairView("May carry", cells.WithUnit(box.Limit));
        yield return new PairView("Leakage", cells.WithUnit(box.Leakage));
        yield return new PairView("All started at once", cells.WithUnit(box.Inrush));
        var used = plan.Power.Circuits.Count(circuit => circuit.Outlet.Device == box.Device) + plan.Power.Feeders.Count(point => point.Device == box.Device);
        yield return new PairView("Spare outlets", Cell.Number(outlets.Sum(row => row.Numbers.Count) - used));
    }

    private static double Amperes(UnitsNet.ElectricCurrent current) => current.Amperes;

    private static string Share(double share) => share.ToString("0.###", CultureInfo.InvariantCulture);
}
