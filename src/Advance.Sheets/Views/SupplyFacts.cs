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
        yield return new PairView("Supply", SupplyOf(service));
        yield return new PairView("Device", DeviceOf(service));
        yield return new PairView("Earthing", Asked(cells.Of(service.Earthing)));
        foreach (var pair in Earths(service))
        {
            yield return pair;
        }

        yield return new PairView("Residual device", Asked(Residual(service)));
        if (service.IsOutdoor is { IsKnown: true } outdoor)
        {
            yield return new PairView("In the open", cells.Of(outdoor) with { Text = outdoor.Value ? "yes" : "no" });
        }

        if (service.IsolatedBy is { } isolated)
        {
            yield return new PairView("Switched off by", cells.Of(isolated));
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

    /// <summary>Of a box behind another: what opens before it, and how the supply far up is earthed.</summary>
    public IEnumerable<PairView> Before(SupplyPoint box)
    {
        var opens = box.FedBy?.Protection;
        yield return new PairView("Opened by", Cell.Of(opens is null ? "nothing that is known" : opens.Row is { } row ? $"{opens.Name}, {row.Device}" : opens.Name));
        if (box.Upwards.Select(point => point.Row).FirstOrDefault(row => row is { Residual.IsKnown: true } && row.Residual.Value.Amperes > 0) is { } trips)
        {
            yield return new PairView("Residual device", Cell.Of($"{Cells.Amount(trips.Residual.Value.Milliamperes, 0).Text} mA before it"));
        }

        if (box.Origin is { } service)
        {
            yield return new PairView("Supply", cells.Of(service.Supply));
            yield return new PairView("Earthing", Asked(cells.Of(service.Earthing)));
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

    // Its kind and curve where they are known, and what it can break.
    private Cell DeviceOf(Service service)
    {
        var cell = service.Device is { } device ? cells.Of(device) : cells.Of(service.Rating);
        return service.Breaks is { } breaks ? cell with { Text = $"{cell.Text}, breaks {cells.Of(breaks).Text}", Tbc = cell.Tbc ?? cells.Of(breaks).Tbc } : cell;
    }

    private Cell SupplyOf(Service service)
    {
        var cell = cells.Of(service.Supply);
        var rules = plan.Power.Services.First(point => point.Service == service).Rules;
        var from = service.Rules is { IsKnown: true } ? "" : ", from its voltage";
        return cell with { Text = $"{cell.Text}, {(rules switch { null => "rules not known", WiringRules.Nec => "NEC" + from, _ => "IEC" + from })}" };
    }

    // As it stands on the device: mA, type, and how long it waits.
    private Cell Residual(Service service)
    {
        var cell = cells.Of(service.ResidualProtection);
        if (!service.ResidualProtection.Is(out var trips))
        {
            return cell;
        }

        var type = service.ResidualType is { IsKnown: true } seen ? $", type {seen.Value}" : "";
        var waits = service.ResidualDelay is { IsKnown: true } delay ? $", waits {Cells.Amount(delay.Value.Milliseconds, 0).Text} ms" : "";
        return cell with { Text = $"{Cells.Amount(trips.Milliamperes, 0).Text} mA{type}{waits}" };
    }

    private static Cell Asked(Cell cell) => cell.Text.Length == 0 ? cell with { Text = "not known", Verdict = Verdict.CannotBeJudged } : cell;
}
