using Advance.Domain.Figures;
using Advance.Domain.Naming;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the cable sheet.</summary>
internal static class CableSheetViews
{
    // What has more cores carries several lines.
    private const int MostCoresOfALine = 4;

    // The order in which they are laid: what is heavy and lies lowest comes first.
    private static readonly string[] Order = ["Feeders", "Multis", "Mains", "Data", "Lighting control", "Loudspeaker leads", "Microphone leads", "Line leads"];

    /// <summary>Null where nothing is cabled.</summary>
    public static CableSheetView? Of(Plan plan)
    {
        var runs = plan.Cables.Runs;
        if (runs.Count == 0)
        {
            return null;
        }

        var cells = new Cells(plan);
        var lines = new RunLines(plan, cells);
        var kinds = plan.Stock.Lines.Where(line => line.Kind?.Cable is not null).ToList();
        var groups = runs.GroupBy(run => (Class: ClassOf(run, plan), Plugs: Plugs(run)))
            .OrderBy(group => Array.IndexOf(Order, group.Key.Class))
            .ThenBy(group => group.Key.Plugs, StringComparer.Ordinal)
            .Select(group => new CableSheetView.Group(
                group.Key.Plugs.Length > 0 ? $"{group.Key.Class}, {group.Key.Plugs}" : group.Key.Class,
                [.. group.OrderBy(run => run.Label, Comparer<string>.Create(Natural.Compare)).Select(lines.Of)]));
        return new CableSheetView
        {
            Groups = [.. groups],
            Ways = [.. plan.Brief.Gig.CableWays.Where(way => way.Laid.Length > 0).Select(way => new PairView(way.Name, Cell.Of(way.Laid)))],
            Kinds = [.. kinds.Select(line => KindOf(line, cells))],
            Findings = FindingViews.Of(plan, finding => finding.Rule.StartsWith("cable/", StringComparison.Ordinal)),
            HasShort = kinds.Any(line => line.Short.Value is not 0),
            IsMetric = plan.Brief.Company.Units == UnitSystem.Metric,
            Unit = cells.LengthUnit,
            RestsOn = Cells.Head(plan.Cables.RestsOn),
        };
    }

    private static string ClassOf(Run run, Plan plan) => run.Link.Carries switch
    {
        "mains" => plan.Brief.Gig.Power.Distributions.Any(box => box.Name == run.Link.To.Port.Device) ? "Feeders" : "Mains",
        "network" => "Data",
        "lighting-control" => "Lighting control",
        "speaker" => "Loudspeaker leads",
        _ when run.Leads.Any(lead => lead.Cable?.Cores > MostCoresOfALine) => "Multis",
        "mic-line" => "Microphone leads",
        _ => "Line leads",
    };

    private static string Plugs(Run run) => (run.Link.From.Connector, run.Link.To.Connector) switch
    {
        ("", "") => "",
        var (from, to) when from == to => from,
        var (from, to) => $"{(from.Length > 0 ? from : "?")} to {(to.Length > 0 ? to : "?")}",
    };

    private static CableSheetView.KindLine KindOf(StockLine line, Cells cells) => new(
        Cell.Of(line.Kind!.Name),
        cells.Length(Figure.From(line.Kind.Cable!.Length)),
        Untagged(cells.Of(line.Need)),
        line.Spare.Value is 0 ? Cell.Blank : Untagged(cells.Of(line.Spare)),
        Untagged(cells.Of(line.Total)) with { Strong = true },
        cells.Of(line.Ready),
        line.Short.Value is 0 ? Cell.Blank : line.Short.Value is null ? new Cell("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged } : Untagged(cells.Of(line.Short)) with { Verdict = Paper.Tree.Verdict.Fails });

    // The question stands in the head of the sheet.
    private static Cell Untagged(Cell cell) => cell with { Tbc = null };
}
