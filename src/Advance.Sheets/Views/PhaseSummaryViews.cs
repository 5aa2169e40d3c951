using System.Globalization;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the phase summary.</summary>
internal sealed class PhaseSummaryViews(Plan plan)
{
    private const int MostNamed = 4;
    private static readonly string[] Rules = ["power/phases-unbalanced", "power/neutral-overload", "power/neutral-missing", "power/voltage-rises"];

    private readonly Cells cells = new(plan);

    /// <summary>Null where every supply has one leg.</summary>
    public static PhaseSummaryView? Of(Plan plan)
    {
        var views = new PhaseSummaryViews(plan);
        var places = plan.Power.ServicesInUse.Concat(plan.Power.Distributions).Where(place => place.Legs.Count > 1 && place.Loom.Count == 0).ToList();
        return places.Count == 0 ? null : new PhaseSummaryView(
            [.. places.Select(views.PlaceOf)],
            DistributionViews.Share(plan.Brief.Company.Policies.CircuitUse / 100),
            FindingViews.Heavy(plan, finding => Rules.Contains(finding.Rule, StringComparer.Ordinal)),
            places.Exists(new SupplyFacts(plan).IsSinglePole),
            Choice(plan.Power),
            Cells.Head(plan.Power.RestsOn));
    }

    private static string Choice(PowerPlan power) => power switch
    {
        { IsProven: true } => "No better choice of outlets exists.",
        { Gap: > 0 } => string.Create(CultureInfo.InvariantCulture, $"Choice of outlets: the fullest rating is used within {100 * power.Gap:0.#} % of the least that any choice could reach."),
        _ => "No choice of outlets can use the fullest rating less.",
    };

    private PhaseSummaryView.Place PlaceOf(SupplyPoint place) =>
        new(place.Name, string.Join(" · ", About(place).Where(part => part.Length > 0)), [.. place.Legs.Select(use => LegOf(place, use))], NeutralOf(place));

    private IEnumerable<string> About(SupplyPoint place)
    {
        yield return place.Connector;
        yield return place.Limit.Value is null ? "" : $"may carry {cells.WithUnit(place.Limit).Text} a leg";
        yield return place.FedBy is { } feed ? $"fed from {feed.Name}" : "";
    }

    private PhaseSummaryView.Leg LegOf(SupplyPoint place, LegUse use)
    {
        var lost = place.NeutralLost?.Legs.FirstOrDefault(one => one.Leg == use.Leg);
        var volts = plan.Voltage.Points.FirstOrDefault(point => point.Point.Address == place.Address)?.Legs.FirstOrDefault(one => one.Leg == use.Leg);
        return new PhaseSummaryView.Leg(
            Cell.Of(use.Leg) with { Strong = true },
            cells.Amount(use.InUse, Amperes, 1) with { Strong = true },
            Cell.Of(use.StateInWords),
            cells.Amount(use.AtMost, Amperes, 1),
            cells.Amount(use.OfLimit, ratio => ratio.Percent, 0),
            use.OfLimit.Value is { } share ? DistributionViews.Share(share.DecimalFractions) : "",
            volts is null ? Cell.Blank : cells.Amount(volts.Drop, ratio => ratio.Percent, 1),
            volts is null ? Cell.Blank : cells.Amount(volts.Alone, ratio => ratio.Percent, 1),
            volts is { Rise.Value.Percent: > 0 } ? cells.Amount(volts.Rise, ratio => ratio.Percent, 1) : Cell.Blank,
            lost is null ? Cell.Blank : cells.Amount(lost.Voltage, volts => volts.Volts, 0),
            AtRisk(place, lost));
    }

    // What hangs between lines does not see the neutral go.
    private static Cell AtRisk(SupplyPoint place, LostLeg? lost) => lost switch
    {
        { AtRisk.Count: > 0 } => Cell.Of(Few([.. lost.AtRisk.Select(load => load.Name)])),
        { } => Cell.Of("nothing"),
        _ => place.Neutral?.AtMost.Current.Value is { Amperes: 0 } ? Cell.Of("nothing uses it") : Cell.Blank,
    };

    private PhaseSummaryView.NeutralLine? NeutralOf(SupplyPoint place) => place.Neutral is not { } neutral ? null : new PhaseSummaryView.NeutralLine(
        cells.Amount(neutral.InUse.Current, Amperes, 1) with { Strong = true },
        Cell.Of(neutral.InUse.Words),
        cells.Amount(neutral.AtMost.Current, Amperes, 1),
        Cell.Of(string.Join(", ", neutral.InUse.Orders.Where(order => order.Order > 1 && order.Current.Value is { Amperes: > 0 }).Select(order =>
            string.Create(CultureInfo.InvariantCulture, $"order {order.Order}: {cells.WithUnit(order.Current).Text}")))),
        Cell.Of(Few(neutral.InUse.Assumed)));

    private static string Few(IReadOnlyList<string> names) => names.Count <= MostNamed
        ? string.Join(", ", names)
        : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", names.Take(MostNamed))} and {names.Count - MostNamed} more");

    private static double Amperes(UnitsNet.ElectricCurrent current) => current.Amperes;
}
