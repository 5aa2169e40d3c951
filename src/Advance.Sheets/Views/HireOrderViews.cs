using Advance.Domain.Facts;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the hire orders: what is short, and what the gig has on hire.</summary>
internal static class HireOrderViews
{
    private const string Nobody = "nobody known yet";

    /// <summary>Null where nothing is hired.</summary>
    public static HireOrdersView? Of(Plan plan)
    {
        var cells = new Cells(plan);
        var wanted = Short(plan, cells).Concat(Hired(plan, cells)).ToList();
        var orders = wanted.GroupBy(line => line.Firm, StringComparer.Ordinal)
            .OrderBy(group => group.Key == Nobody)
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => OrderOf(group.Key, [.. group], plan));
        return wanted.Count > 0 ? new HireOrdersView([.. orders]) : null;
    }

    private static HireOrdersView.Order OrderOf(string firm, IReadOnlyList<(string Firm, HireOrdersView.Line Line, Doubts RestsOn)> lines, Plan plan)
    {
        var days = plan.Brief.Company.Policies.HireDays;
        var dates = Dates(plan);
        return new HireOrdersView.Order(
            $"hire-order-{Slug.Of(firm)}",
            firm,
            plan.Brief.Company.Name,
            dates.Count > 0 ? Cell.Date(dates[0].AddDays(-days.Before)) : Cell.Of("date TBC"),
            dates.Count > 0 ? Cell.Date(dates[^1].AddDays(days.After)) : Cell.Of("date TBC"),
            [.. lines.Select(line => line.Line)],
            Cells.Head(lines.Aggregate(Doubts.None, (sum, line) => sum.With(line.RestsOn))));
    }

    private static List<DateOnly> Dates(Plan plan) => plan.ShowDate is not { } near ? [] :
    [
        .. plan.Brief.Gig.Days.Where(day => day.Date.IsKnown).Select(day => day.Date.Value.Resolve(near)).Append(near).Order(),
    ];

    private static IEnumerable<(string Firm, HireOrdersView.Line Line, Doubts RestsOn)> Short(Plan plan, Cells cells) =>
        plan.Stock.Lines.Where(line => line.Short.Value > 0).Select(line => (
            line.Kind is { HireFrom.Length: > 0 } kind ? kind.HireFrom : Nobody,
            new HireOrdersView.Line(
                cells.Of(line.Short) with { Strong = true },
                Cell.Of(line.Kind?.Name ?? line.Item),
                Cell.Of(line.ShortInUse.Value > 0 ? $"short: {line.Ready.Value} ready of {line.Total.Value}" : $"short as a spare: {line.Ready.Value} ready of {line.Total.Value}")),
            line.Short.RestsOn));

    // What comes along with a hired piece is part of it.
    private static IEnumerable<(string Firm, HireOrdersView.Line Line, Doubts RestsOn)> Hired(Plan plan, Cells cells) =>
        plan.Pieces.Where(piece => piece.From.Is(out var owner) && owner.Kind == OwnerKind.Hire)
            .GroupBy(piece => (Firm: piece.From.Or(new Owner(OwnerKind.Hire)).Name ?? Nobody, piece.Item, IsCompanion: piece.Why is Need.GoesWith))
            .Select(group =>
            {
                var doubts = group.Aggregate(Doubts.None, (sum, piece) => sum.With(Doubts.Of(piece.From.Doubt)));
                var name = group.First().Kind?.Name ?? group.Key.Item;
                return (
                    group.Key.Firm,
                    new HireOrdersView.Line(
                        Cell.Number(group.Count()) with { Strong = true, Tbc = cells.NoteOf(doubts) },
                        Cell.Of(name),
                        Cell.Of(group.Key.IsCompanion ? "goes with it" : WhyOf(group.First(), plan))),
                    doubts);
            });

    private static string WhyOf(Piece piece, Plan plan) => piece.Why is Need.AskedFor asked
        ? plan.Brief.Gig.Extras.FirstOrDefault(extra => extra.At == asked.At)?.Why ?? piece.Name
        : piece.Name;
}
