using Advance.Domain.Wording;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Turns runs into lines of the cable sheet.</summary>
internal sealed class RunLines(Plan plan, Cells cells)
{
    // Less than this is no coil.
    private const double LeastCoil = 1;

    private readonly Speech speech = Speech.Of(plan.Brief.Company.Units);

    /// <summary>One run.</summary>
    public CableSheetView.Line Of(Run run) => new(
        Cell.Of(run.Label) with { Strong = true },
        Cell.Of(EndOf(run.Link.From)),
        IsHop(run) ? Cell.Blank : PlaceOf(run.Link.From),
        Cell.Of(EndOf(run.Link.To)),
        IsHop(run) ? Cell.Blank : PlaceOf(run.Link.To),
        Cell.Of(RouteOf(run)),
        cells.Length(run.Needed) with { Tbc = null },
        TakeOf(run),
        LeftOverOf(run),
        Cell.Of(string.Join("; ", Notes(run))) with { Tbc = run.Needed.RestsOn.Any ? "" : null });

    // A microphone has one connector: its name says which.
    internal static string EndOf(LinkEnd end) => end.Port.Number is null ? end.Port.Device : end.Port.ToString();

    // From box to box in a chain: they stand beside each other.
    private static bool IsHop(Run run) => run.Link is { From.Port.Number: null, To.Port.Number: null } && run.Link.From.Port.Kind == Domain.Facts.PortKind.Link;

    private Cell PlaceOf(LinkEnd end) => end is { Port.Number: null, Spot: { } spot } ? cells.Of(spot) : Cell.Blank;

    private static string RouteOf(Run run)
    {
        if (run.Route is not { } route)
        {
            return "way not known";
        }

        var via = string.Join(", ", route.Via);
        var climbs = route.Climbs > 0 ? "over edge" : "";
        return string.Join(", ", new[] { run.Loom ?? "", via, climbs }.Where(part => part.Length > 0));
    }

    private Cell TakeOf(Run run) => run.Leads.Count == 0
        ? new Cell("none") { Verdict = run.Gap == RunGap.NotKnown ? Verdict.CannotBeJudged : Verdict.Fails }
        : Cell.Of(string.Join(" + ", run.Leads.Select(lead => lead.Cable is { } cable ? cells.Length(Domain.Figures.Figure.From(cable.Length)).Text : "?"))) with { Strong = true };

    private Cell LeftOverOf(Run run) => run.Surplus.Value is { } surplus && surplus.Meters >= LeastCoil
        ? Cell.Of($"{cells.Length(run.Surplus).Text} at {(run.LeftOverAt == run.Link.From ? "From" : "To")}")
        : Cell.Blank;

    private static IEnumerable<string> Notes(Run run)
    {
        var gap = run.Gap switch
        {
            RunGap.NotKnown => "an end or its connector is not known",
            RunGap.NothingMates => "nothing owned fits both ends",
            RunGap.NoneLongEnough => "nothing owned is long enough",
            RunGap.AllTaken => "all that fit are in use",
            _ => "",
        };
        if (gap.Length > 0)
        {
            yield return gap;
        }

        if (run.Route is { Trespasses.Count: > 0 } route)
        {
            yield return $"keep clear of {string.Join(", ", route.Trespasses)}";
        }

        if (run.Leads.Any(lead => lead.Cable?.Length is { IsKnown: true } length && length.Value.Meters < LeastCoil))
        {
            yield return $"with {string.Join(", ", run.Leads.Where(lead => lead.Cable!.Length is { IsKnown: true } length && length.Value.Meters < LeastCoil).Select(lead => CaseWords.Short(lead, lead.Id)))}";
        }
    }
}
