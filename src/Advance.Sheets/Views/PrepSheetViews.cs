using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the prep sheet.</summary>
internal static class PrepSheetViews
{
    /// <summary>Null where nothing is set in the shop.</summary>
    public static PrepSheetView? Of(Plan plan)
    {
        var cells = new Cells(plan);
        var view = new PrepSheetView(
            [.. plan.Lighting.Fixtures.Where(fixture => fixture.Piece.IsPulled).Select(fixture => FixtureOf(fixture, cells))],
            [.. plan.Drive.Units.Select(unit => UnitOf(unit, cells))],
            [.. plan.Drive.Outputs.Select(output => OutputOf(output, cells))],
            [.. plan.Drive.Boxes.Where(IsSet).Select(box => BoxOf(box, cells))],
            [.. Radios(plan, cells)],
            FindingViews.Of(plan, finding => finding.Rule == "stock/test-date-due"),
            Cells.Head(plan.Lighting.Fixtures.Aggregate(Doubts.None, (sum, fixture) => sum.With(fixture.RestsOn))));
        return view.Fixtures.Count + view.Units.Count + view.Outputs.Count + view.Boxes.Count + view.Radios.Count + view.Tests.Count > 0 ? view : null;
    }

    private static PrepSheetView.Fixture FixtureOf(FixturePlan fixture, Cells cells) => new(
        Cell.Number(fixture.Number) with { Strong = true },
        Cell.Of(fixture.Piece.Kind?.Name ?? fixture.Piece.Item),
        Cell.Of(fixture.Row.Position),
        fixture.Mode is { } mode ? Cell.Of(mode.Name) : fixture.Modes.Count > 0 ? new Cell("not known") { Verdict = Paper.Tree.Verdict.CannotBeJudged } : Cell.Blank,
        AddressOf(fixture) with { Strong = true, Tbc = cells.NoteOf(fixture.ControlDoubts) });

    private static Cell AddressOf(FixturePlan fixture) => fixture.At is { } at
        ? Cell.Of(at.ToString())
        : fixture.IsWired ? new Cell("none") { Verdict = Paper.Tree.Verdict.CannotBeJudged } : Cell.Blank;

    private static PrepSheetView.Unit UnitOf(NetworkUnit unit, Cells cells) => new(
        Cell.Of(unit.Name) with { Strong = true },
        Cell.Of(unit.Kind.Name),
        unit.Network is { } network ? Cell.Of(network.ToString()) with { Tbc = cells.NoteOf(unit.RestsOn) } : unit.HasPort ? new Cell("none") { Verdict = Paper.Tree.Verdict.CannotBeJudged } : Cell.Blank,
        Cell.Of(unit.Software));

    private static PrepSheetView.Output OutputOf(DriveOutput output, Cells cells) => new(
        Cell.Of(output.Port.ToString()) with { Strong = true },
        Cell.Of(string.Join(", ", output.Stacks.Select(stack => stack.Name))),
        PolarityOf(output.Set),
        cells.WithUnit(output.Set.Gain),
        cells.WithUnit(output.Set.Delay),
        FiltersOf(output.Set, cells),
        Cell.Of(output.Set.StartsMuted?.Value == true ? "muted" : ""));

    private static PrepSheetView.Box BoxOf(DrivenBox box, Cells cells) => new(
        Cell.Of(box.Box.Piece.Name) with { Strong = true },
        Cell.Of(CaseWords.Short(box.Box.Piece.Kind, box.Box.Piece.Item)),
        PolarityOf(box.Set),
        cells.WithUnit(box.Set.Delay),
        FiltersOf(box.Set, cells),
        box.Set.Aim is { } aim ? cells.WithUnit(aim) : Cell.Blank);

    // A box that is left as it comes off the shelf needs no line.
    private static bool IsSet(DrivenBox box) =>
        box.Box.Piece.IsPulled
        && (box.Set.Polarity.Value != Polarity.Normal || box.Set.Delay.Value is not { Seconds: 0 } || box.Set.HighPass is not null || box.Set.LowPass is not null || box.Set.Aim is not null);

    private static Cell PolarityOf(DriveSettings set) => Cell.Of(set.Polarity.Value == Polarity.Reversed ? "reversed" : "normal") with { Strong = set.Polarity.Value == Polarity.Reversed };

    private static Cell FiltersOf(DriveSettings set, Cells cells)
    {
        var filters = new[] { Named("high-pass", set.HighPass, cells), Named("low-pass", set.LowPass, cells) }.Where(filter => !filter.IsBlank).ToList();
        return filters.Count == 0 ? Cell.Of("none") : filters[0] with { Text = string.Join(", ", filters.Select(filter => filter.Text)), Tbc = filters.Select(filter => filter.Tbc).FirstOrDefault(tag => tag is not null) };
    }

    private static Cell Named(string name, Figure<UnitsNet.Frequency>? filter, Cells cells) =>
        filter is null ? Cell.Blank : cells.WithUnit(filter) is var cell ? cell with { Text = $"{name} {cell.Text}" } : Cell.Blank;

    private static IEnumerable<PrepSheetView.Radio> Radios(Plan plan, Cells cells) =>
        plan.Pieces.Where(piece => piece.Kind?.IsRadio == true && piece.From.Is(out var owner) && owner.Kind is OwnerKind.Shop or OwnerKind.Hire)
            .GroupBy(piece => (piece.Item, From: OwnerWords.Of(piece.From.Or(new Owner(OwnerKind.Shop)))))
            .OrderBy(group => group.Key.Item, StringComparer.Ordinal)
            .ThenBy(group => group.Key.From, StringComparer.Ordinal)
            .Select(group => new PrepSheetView.Radio(
                Cell.Number(group.Count()) with { Tbc = cells.NoteOf(group.Aggregate(Doubts.None, (sum, piece) => sum.With(Doubts.Of(piece.From.Doubt)))) },
                Cell.Of(group.Key.From == "shop" ? group.First().Kind!.Name : $"{group.First().Kind!.Name}, {group.Key.From}"),
                Cell.Of(RadioFor(plan, group.Key.Item, [.. group.Where(piece => piece.Name != piece.Item).Select(piece => piece.Name).Distinct(StringComparer.Ordinal)]))));

    // What goes with something has its name; what is brought beside has its reason.
    private static string RadioFor(Plan plan, string item, IReadOnlyList<string> names) =>
        names.Count > 0 ? string.Join(", ", names) : plan.Brief.Gig.Extras.FirstOrDefault(extra => extra.Item == item)?.Why ?? "";
}
