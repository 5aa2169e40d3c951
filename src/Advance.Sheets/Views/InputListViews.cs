using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the input lists.</summary>
internal static class InputListViews
{
    /// <summary>One for each act, in the order of the gig.</summary>
    public static InputListsView Of(Plan plan)
    {
        var cells = new Cells(plan);
        return new InputListsView([.. plan.Brief.Gig.Acts.Select(act => Of(act, plan, cells))]);
    }

    private static InputListView Of(Act act, Plan plan, Cells cells)
    {
        var lines = plan.Patch.Lines.Where(line => line.Act is null || line.Act == act.Name).OrderBy(line => line.Channel).ToList();
        var mixes = plan.Patch.Returns.Where(mix => mix.Act == act.Name).GroupBy(mix => mix.Row).ToList();
        return new InputListView(
            $"input-list-{Slug.Of(act.Name)}",
            act.Name,
            cells.Of(act.People),
            string.Join(", ", act.Sets.Where(set => set.IsKnown).Select(set => $"{set.Value.Start}–{set.Value.End}")),
            [.. lines.Select(line => LineOf(line, cells))],
            [.. mixes.Select(rows => MixOf([.. rows], cells))],
            [.. Totals(lines, plan)],
            [.. plan.Patch.Uses.Select(use => BoxOf(use, cells))]);
    }

    private static InputListView.Line LineOf(PatchLine line, Cells cells)
    {
        var device = line.Device?.Item ?? "";
        return new InputListView.Line(
            Cell.Number(line.Channel) with { Strong = true },
            Cell.Of(line.Source) with { Strong = true },
            Cell.Of(device) with { Tbc = line.Row.Device?.Doubt is { } doubt ? cells.Note(doubt) : null },
            Cell.Of(line.Row.Stand),
            Cell.Of(line.Device?.Kind?.Phantom == Phantom.Needed ? "48V" : ""),
            cells.Of(line.Row.Place),
            PortOf(line.Port, cells.Of(line.Row.Port)),
            FromOf(line, cells),
            Cell.Of(line.Row.Note),
            line.JoinsNext);
    }

    // The shop's own needs no words: only what somebody else brings is a question at load-in.
    private static Cell FromOf(PatchLine line, Cells cells) =>
        line.Row.From is { } from && !(from.Is(out var owner) && owner.Kind == OwnerKind.Shop && from.Doubt is null) ? cells.Of(from) : Cell.Blank;

    private static Cell PortOf(Port? port, Cell written) =>
        (port is null ? new Cell("none left") { Verdict = Verdict.Fails } : Cell.Of($"{port.Device}-{port.Number}")) with { Tbc = written.Tbc };

    private static InputListView.Mix MixOf(IReadOnlyList<PatchReturn> halves, Cells cells)
    {
        var row = halves[0].Row;
        var with = row.With is { } given && given.Is(out var item) ? $"{(item.Count > 1 ? $"{item.Count} × " : "")}{item.Item}" : "";
        return new InputListView.Mix(
            Cell.Of(row.Numbers.ToString()) with { Strong = true },
            Cell.Of(row.For) with { Strong = true },
            Cell.Of(row.Numbers.Count == 2 ? "stereo" : "mono"),
            Cell.Of(with) with { Tbc = row.With?.Doubt is { } doubt ? cells.Note(doubt) : null },
            cells.Of(row.Place),
            Ports(halves),
            Cell.Of(row.Wants));
    }

    private static Cell Ports(IReadOnlyList<PatchReturn> halves)
    {
        if (halves.Any(half => half.Port is null))
        {
            return new Cell("none left") { Verdict = Verdict.Fails };
        }

        var numbers = halves.Select(half => half.Port!.Number!.Value).ToList();
        return Cell.Of($"{halves[0].Port!.Device}-{Drawings.ChannelWords.Of(numbers)}");
    }

    private static IEnumerable<PairView> Totals(List<PatchLine> lines, Plan plan)
    {
        yield return new PairView("Lines", Cell.Number(lines.Count));
        yield return new PairView("Microphones", Count(lines, Role.Microphone));
        yield return new PairView("DIs", Count(lines, Role.DirectBox));
        yield return new PairView("Stands", Cell.Of(Stands(lines, plan)));
    }

    private static Cell Count(IEnumerable<PatchLine> lines, Role role) => Cell.Number(lines.Count(line => line.Device?.Kind?.Role == role));

    private static string Stands(IEnumerable<PatchLine> lines, Plan plan)
    {
        var wanted = lines.Select(line => line.Address.Text + "/stand").ToList();
        var stands = plan.Patch.Pieces
            .Where(piece => piece.Kind?.Role == Role.Stand && wanted.Exists(prefix => piece.Address.Text.StartsWith(prefix, StringComparison.Ordinal)))
            .GroupBy(piece => piece.Item, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal);
        return string.Join(", ", stands.Select(group => $"{group.Count()} {group.Key.Replace('-', ' ')}"));
    }

    private static InputListView.Box BoxOf(BoxUse use, Cells cells)
    {
        var free = use.Ports.Value is { } ports && use.Used.Value is { } used ? Cell.Number(ports - used) : new Cell("?") { Verdict = Verdict.CannotBeJudged };
        var isTight = use.WantedFree.AtMost(new(use.Ports.Value - use.Used.Value, use.Ports.RestsOn, use.Ports.Why)) == Domain.Figures.Verdict.Fails;
        return new InputListView.Box(
            Cell.Of($"{use.Box} {(use.Kind == PortKind.Input ? "in" : "out")}"),
            cells.Of(use.Used),
            free with { Strong = isTight },
            cells.Of(use.WantedFree));
    }
}
