using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the request for supplies.</summary>
internal static class SupplyRequestViews
{
    /// <summary>Null where the show hangs on no service.</summary>
    public static SupplyRequestView? Of(Plan plan)
    {
        var services = plan.Power.ServicesInUse.ToList();
        return services.Count > 0 ? new SupplyRequestView([.. services.Select(point => ServiceOf(point, plan))], services.Count > 1, services.Count > 1 ? new Cells(plan).Of(plan.Brief.Gig.Power.EarthsJoined) : Cell.Blank) : null;
    }

    private static SupplyRequestView.Service ServiceOf(SupplyPoint point, Plan plan)
    {
        var cells = new Cells(plan);
        var service = point.Service!;
        return new SupplyRequestView.Service(
            Capital(point.Name),
            [
                new PairView("Where", cells.Of(service.Place)),
                new PairView("Connector", cells.Of(service.Connector)),
                new PairView("On from", HoldOf(plan, cells)),
                .. point.Legs.SelectMany(use => new[]
                {
                    new PairView(Named("In use, with all", use.Leg), cells.WithUnit(use.InUse) with { Strong = true }),
                    new PairView(Named("At most, with all", use.Leg), cells.WithUnit(use.AtMost)),
                }),
                new PairView("Real power", RealOf(plan.Power.Powers.First(power => power.Service == point), cells)),
                .. point.Neutral is { InUse: var neutral } ? [new PairView("Neutral, worst", cells.WithUnit(neutral.Current) with { Strong = true })] : Array.Empty<PairView>(),
                new PairView("Started at once", cells.WithUnit(point.Inrush)),
                new PairView("Leakage", cells.WithUnit(point.Leakage)),
            ],
            [.. new SupplyFacts(plan).Of(service)],
            [.. plan.Power.Circuits.Where(circuit => circuit.Outlet.Upwards.Any(above => above.Address == point.Address)).Select(circuit => LoadOf(circuit, cells))],
            FindingViews.Heavy(plan, finding => FindingViews.IsAt(finding, point.Address.Text)),
            Cells.Head(plan.Power.RestsOn))
        {
            IsRulesAsked = service.Rules is not { IsKnown: true },
        };
    }

    private static Cell RealOf(ServicePower power, Cells cells)
    {
        var cell = cells.WithUnit(power.Worst.Real);
        return cell with { Text = $"{cell.Text}, {power.Worst.StateInWords}" };
    }

    private static SupplyRequestView.Load LoadOf(Circuit circuit, Cells cells) => new(
        Cell.Of(circuit.Name),
        Cell.Of(string.Join(", ", circuit.Outlet.Legs.Select(use => use.Leg).Where(leg => leg.Length > 0))),
        Cell.Of(circuit.Chain.Name),
        cells.Amount(circuit.Use.InUse, Amperes, 1) with { Strong = true },
        cells.Amount(circuit.Use.AtMost, Amperes, 1));

    // Power is wanted when the schedule says that it is switched on.
    private static Cell HoldOf(Plan plan, Cells cells)
    {
        var gig = plan.Brief.Gig;
        if (gig.Schedule.FirstOrDefault(row => row.What.Contains("power", StringComparison.OrdinalIgnoreCase)) is not { } hold)
        {
            return Cell.Blank;
        }

        var cell = cells.Of(hold.Time);
        return gig.Days.FirstOrDefault(day => day.Name == hold.Day) is { Kind: not Domain.Gigs.DayKind.Show } day ? Cell.Of($"{cell.Text}, {ScheduleDays.NameOf(day, plan)}") with { Tbc = cell.Tbc } : cell;
    }

    private static string Named(string words, string leg) => leg.Length > 0 ? $"{words}, {leg}" : words;

    private static double Amperes(UnitsNet.ElectricCurrent current) => current.Amperes;

    private static string Capital(string text) => DaySheetViews.Capital(text);
}
