using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using Advance.Handbook;
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
    private readonly DistributionRows rows;

    private DistributionViews(Plan plan)
    {
        this.plan = plan;
        speech = Speech.Of(plan.Brief.Company.Units);
        cells = new Cells(plan);
        leads = new LeadCells(plan, speech);
        facts = new SupplyFacts(plan);
        rows = new DistributionRows(plan, cells, leads);
    }

    /// <summary>One for each distribution; null where there is none.</summary>
    public static DistributionsView? Of(Plan plan)
    {
        var makes = new DistributionViews(plan);
        var boxes = plan.Power.Distributions.Where(DistributionRows.HasOwnSheet).Select(makes.ViewOf).ToList();
        return boxes.Count > 0 ? new DistributionsView(boxes) : null;
    }

    private DistributionView ViewOf(SupplyPoint box)
    {
        var outlets = box.DeviceKind?.Outlets ?? [];
        List<SupplyPoint> strips = [.. rows.StripsBehind(box)];
        return new DistributionView(
            $"distribution-{Slug.Of(box.Name)}",
            box.Name,
            [.. Facts(box)],
            [.. rows.Of(box)],
            [.. Totals(box, strips)],
            FindingViews.Heavy(plan, finding => IsAbout(finding, Ours(box, strips))),
            cells.LengthUnit,
            Share(plan.Brief.Company.Policies.CircuitUse / 100),
            outlets.Any(row => row.Device.Length > 0),
            box.Legs.Count > 1,
            facts.IsSinglePole(box) ? [.. ConductorColours.Of(box.Legs.Count, box.Rules == WiringRules.Nec).Select(core => new PairView(core.Conductor, Cell.Of(core.Colour)))] : [],
            plan.Power.ServicesInUse.Skip(1).Any(),
            Cells.Head(plan.Power.RestsOn.With(plan.Cables.RestsOn)))
        {
            Before = Before(box, strips),
        };
    }

    // The first box behind a service has that, too; what is said of boxes before a later one stands on their sheets.
    private static IEnumerable<SupplyPoint> Ours(SupplyPoint box, IEnumerable<SupplyPoint> strips) =>
        box.FedBy is { Service: not null } service ? strips.Prepend(box).Append(service) : strips.Prepend(box);

    private static bool IsAbout(Finding finding, IEnumerable<SupplyPoint> points) => points.Any(point => FindingViews.IsAt(finding, point.Address.Text));

    private Cell Before(SupplyPoint box, IReadOnlyList<SupplyPoint> strips)
    {
        HashSet<string> here = [.. Ours(box, strips).Select(point => point.Address.Text)];
        var names = box.Upwards.Where(point => !here.Contains(point.Address.Text))
            .Where(point => plan.Findings.Any(finding => finding is { Severity: >= Severity.Concern, Accepted: null } && FindingViews.IsAt(finding, point.Address.Text)))
            .Select(point => point.Name);
        return Cell.Of(string.Join(", ", names));
    }

    private IEnumerable<PairView> Facts(SupplyPoint box)
    {
        yield return new PairView("Stands", box.Device is { } device ? cells.Of(device.Place) : Cell.Blank);
        yield return new PairView("Fed from", box.FedBy is { } feed ? Cell.Of(feed.Name) : new Cell("nothing") { Verdict = Paper.Tree.Verdict.Fails });
        yield return new PairView("Feeder", leads.Lead(plan.Links.FirstOrDefault(link => link.Carries == LeadCells.Mains && link.To.Port.Device == box.Name)));
        var source = box.Upwards.Last();
        foreach (var fact in box.FedBy is { Service: { } service } ? facts.Of(service) : facts.Before(box))
        {
            yield return fact;
        }

        foreach (var use in box.FedBy is { Service: not null } ? source.Legs : [])
        {
            yield return new PairView(use.Leg.Length > 0 ? $"{source.Name} {use.Leg}, with all" : $"{source.Name}, with all", cells.WithUnit(use.InUse) with { Strong = true });
        }
    }

    private IEnumerable<PairView> Totals(SupplyPoint box, IReadOnlyList<SupplyPoint> strips)
    {
        foreach (var use in box.Legs)
        {
            var name = use.Leg.Length > 0 ? $"{use.Leg} in use" : "In use";
            yield return new PairView(name, cells.WithUnit(use.InUse) with { Strong = true });
            yield return new PairView(use.Leg.Length > 0 ? $"{use.Leg} at most" : "At most", cells.WithUnit(use.AtMost));
        }

        if (box.Neutral is { InUse: var neutral })
        {
            var cell = cells.WithUnit(neutral.Current);
            yield return new PairView("Neutral", cell with { Text = $"{cell.Text}, {neutral.Words}", Strong = true });
        }

        yield return new PairView("May carry", cells.WithUnit(box.Limit));
        yield return new PairView("Leakage", cells.WithUnit(box.Leakage));
        yield return new PairView("All started at once", cells.WithUnit(box.Inrush));
        foreach (var pair in Selectivity(box))
        {
            yield return pair;
        }

        var spare = strips.Prepend(box).Select(one => (one.Name, Numbers: string.Join(", ", rows.Spare(one)))).Where(one => one.Numbers.Length > 0).ToList();
        yield return new PairView("Spare outlets", Cell.Of(spare.Count == 0 ? "none" : string.Join("; ", spare.Select(one => one.Name == box.Name ? one.Numbers : $"{one.Name} {one.Numbers}"))));
    }

    // Of a box without devices there is nothing to say.
    private IEnumerable<PairView> Selectivity(SupplyPoint box)
    {
        if (box.DeviceKind?.Outlets.Any(row => row.Device.Length > 0) ?? false)
        {
            var (own, asked) = (plan.Protection.Selectivity, Doubts.Of(box.Origin?.ResidualProtection.Doubt));
            yield return new PairView("Devices selective", Selective(own.OvercurrentOf(box.Name), DoubtsOf(own.Overcurrent, box)));
            yield return new PairView("RCDs selective", Selective(own.ResidualOf(box.Name), DoubtsOf(own.Residual, box).With(asked)));
        }
    }

    private static Doubts DoubtsOf(IEnumerable<DevicePair> pairs, SupplyPoint box) =>
        pairs.Where(pair => pair.Box == box.Name).Aggregate(Doubts.None, (sum, pair) => sum.With(pair.RestsOn));

    private Cell Selective(Selective? selective, Doubts rests)
    {
        var word = selective switch
        {
            Planning.Selective.Yes => "yes",
            Planning.Selective.No => "no",
            Planning.Selective.NotShown => "not shown",
            _ => rests.Count > 0 ? "not known" : "none before it",
        };
        return Cell.Of(word) with { Tbc = cells.NoteOf(rests) };
    }

    internal static string Share(double share) => share.ToString("0.###", CultureInfo.InvariantCulture);
}
