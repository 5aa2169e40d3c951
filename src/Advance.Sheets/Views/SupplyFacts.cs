using Advance.Domain.Venues;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Says what is known of a service, and what the electrician still has to find out.</summary>
internal sealed class SupplyFacts(Plan plan)
{
    private readonly Cells cells = new(plan);

    /// <summary>In the order in which an electrician asks.</summary>
    public IEnumerable<PairView> Of(Service service)
    {
        yield return new PairView("Supply", cells.Of(service.Supply));
        yield return new PairView("Rules", RulesOf(service));
        yield return new PairView("Device", cells.Of(service.Rating));
        yield return new PairView("Earthing", Asked(cells.Of(service.Earthing)));
        foreach (var pair in Earths(service))
        {
            yield return pair;
        }

        yield return new PairView("Residual device", Asked(Residual(service)));
        foreach (var pair in Residuals(service))
        {
            yield return pair;
        }

        yield return new PairView("Loop at inlet", service.LoopImpedance is { } loop ? cells.Of(loop) : new Cell("not known, so not judged") { Verdict = Verdict.CannotBeJudged });
        if (service.FaultCurrent is { } largest)
        {
            yield return new PairView("Largest fault", cells.Of(largest));
        }

        if (service.Behind is { } behind)
        {
            yield return new PairView("Runs through", cells.Of(behind));
        }

        foreach (var limit in service.Upstream is { IsKnown: true } name ? plan.Power.Upstreams.Where(point => string.Equals(point.Name, name.Value, StringComparison.OrdinalIgnoreCase)) : [])
        {
            var use = cells.WithUnit(limit.Worst.InUse);
            yield return new PairView("With others behind", use with { Text = $"{limit.Name}, {cells.WithUnit(limit.Limit).Text}, {use.Text} in use of it" });
        }

        if (service.SharedWith.Count > 0)
        {
            yield return new PairView("Also on it", Cell.Of(string.Join(", ", service.SharedWith.Select(other => $"{other.What}{(cells.Of(other.InUse) is { Text.Length: > 0 } draw ? " " + draw.Text : "")}"))));
        }
    }

    /// <summary>Whether leads of one core each feed it.</summary>
    public bool IsSinglePole(SupplyPoint point) => plan.Cables.Of(Domain.Figures.Address.Of("link") / "power" / point.Name)?.Leads.Any(lead => lead.Cable?.Cores == 1) ?? false;

    // Only what somebody has said, or has asked; the rest is asked by the lines to answer on.
    private IEnumerable<PairView> Earths(Service service)
    {
        if (service.NeutralEarthLink is { } link)
        {
            yield return new PairView("Neutral to earth", cells.Of(link));
        }

        if (service.Electrode is { } electrode)
        {
            yield return new PairView("Electrode", cells.Of(electrode));
        }
    }

    private IEnumerable<PairView> Residuals(Service service)
    {
        if (service.ResidualType is { } type)
        {
            yield return new PairView("Its type", cells.Of(type));
        }

        if (service.ResidualDelay is { } delay)
        {
            yield return new PairView("It waits", cells.Of(delay) is var cell && delay.Is(out var waits) ? cell with { Text = $"{Cells.Amount(waits.Milliseconds, 0).Text} ms" } : cell);
        }

        if (service.IsOutdoor is { } outdoor)
        {
            yield return new PairView("In the open", cells.Of(outdoor) is var cell && outdoor.Is(out var isOutdoor) ? cell with { Text = isOutdoor ? "yes" : "no" } : cell);
        }

        if (service.IsolatedBy is { } isolated)
        {
            yield return new PairView("Switched off by", cells.Of(isolated));
        }
    }

    private Cell RulesOf(Service service)
    {
        var rules = plan.Power.Services.First(point => point.Service == service).Rules;
        var cell = Cell.Of(rules switch { null => "not known", WiringRules.Nec => "NEC", _ => "IEC" });
        return service.Rules is { IsKnown: true } || rules is null ? cell : cell with { Text = $"{cell.Text}, from its voltage" };
    }

    // Always in mA, as it stands on the device.
    private Cell Residual(Service service) => cells.Of(service.ResidualProtection) is var cell && service.ResidualProtection.Is(out var trips)
        ? cell with { Text = $"{Cells.Amount(trips.Milliamperes, 0).Text} mA" }
        : cell;

    private static Cell Asked(Cell cell) => cell.Text.Length == 0 ? cell with { Text = "not known", Verdict = Verdict.CannotBeJudged } : cell;
}
