using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the stage-box cards.</summary>
internal static class StageBoxCardViews
{
    /// <summary>One for each box; null where there is none.</summary>
    public static StageBoxCardsView? Of(Plan plan)
    {
        var cells = new Cells(plan);
        var cards = plan.Sound.Boxes.Select(box => CardOf(box, plan, cells)).ToList();
        return cards.Count > 0 ? new StageBoxCardsView(cards) : null;
    }

    private static StageBoxCardView CardOf(PortBox box, Plan plan, Cells cells)
    {
        var name = box.Device.Name;
        var acts = plan.Brief.Gig.Acts.Select(act => act.Name).ToList();
        var lines = plan.Patch.Lines.Where(line => line.Port?.Device == name).ToLookup(line => line.Port!.Number ?? 0);
        var mixes = plan.Patch.Returns.Where(mix => mix.Port?.Device == name).ToLookup(mix => mix.Port!.Number ?? 0);
        var feeds = plan.Sound.Links
            .Where(link => link.From.Port is { Kind: PortKind.Output, Number: not null } port && port.Device == name)
            .ToLookup(link => link.From.Port.Number!.Value);
        var doubts = plan.Patch.Lines.Where(line => line.Port?.Device == name).Aggregate(Doubts.None, (sum, line) => sum.With(line.RestsOn));
        return new StageBoxCardView(
            $"stage-box-{Slug.Of(name)}",
            name,
            cells.Of(box.Device.Place),
            acts,
            Rows(box.Inputs, port => lines[port].Any(), port => InputOf(port, [.. lines[port]], acts, plan), acts),
            Rows(box.Outputs, port => mixes[port].Any() || feeds[port].Any(), port => OutputOf(port, [.. mixes[port]], [.. feeds[port]], acts, plan), acts),
            Cells.Head(doubts));
    }

    // Free ports in a row are one line, so that the card stays small enough for the lid.
    private static List<StageBoxCardView.Line> Rows(Figure<int> count, Func<int, bool> isUsed, Func<int, StageBoxCardView.Line> used, List<string> acts)
    {
        var rows = new List<StageBoxCardView.Line>();
        for (var port = 1; port <= (count.Value ?? 0); port++)
        {
            if (isUsed(port))
            {
                rows.Add(used(port));
                continue;
            }

            var first = port;
            while (port < count.Value && !isUsed(port + 1))
            {
                port++;
            }

            rows.Add(Free(first, port, acts));
        }

        return rows;
    }

    private static StageBoxCardView.Line Free(int first, int last, List<string> acts) => new(
        first == last ? Cell.Number(first) : Cell.Of($"{first}–{last}"), Cell.Of("free"), [.. acts.Select(_ => Cell.Blank)], Cell.Blank, Cell.Blank);

    private static StageBoxCardView.Line InputOf(int port, IReadOnlyList<PatchLine> lines, List<string> acts, Plan plan) => new(
        Cell.Number(port),
        Named(lines.FirstOrDefault(line => line.Act is null)),
        [.. acts.Select(act => Named(lines.FirstOrDefault(line => line.Act == act)))],
        Unless($"{lines[0].Port!.Device}-{port}", Lead(lines.Select(line => line.Address), plan)),
        Cell.Of(lines.Any(line => line.Device?.Kind?.Phantom == Phantom.Needed) ? "48V" : ""));

    private static StageBoxCardView.Line OutputOf(int port, IReadOnlyList<PatchReturn> mixes, IReadOnlyList<Link> feeds, List<string> acts, Plan plan) => new(
        Cell.Number(port),
        Cell.Of(string.Join(", ", feeds.Select(feed => feed.To.Port.ToString()))),
        [.. acts.Select(act => Named(mixes.FirstOrDefault(mix => mix.Act == act)))],
        feeds.Count > 0 ? LabelOf(feeds.Select(feed => feed.Address), plan) : Lead(mixes.Select(mix => mix.Address), plan),
        Cell.Blank);

    private static Cell Named(PatchLine? line) => line is null ? Cell.Blank : Cell.Of($"{line.Source}") with { Strong = true };

    private static Cell Named(PatchReturn? mix)
    {
        var isStereo = mix?.Row.Numbers.Count == 2;
        return mix is null ? Cell.Blank : Cell.Of($"Mix {mix.Number} {mix.Row.For}{(isStereo ? mix.Number == mix.Row.Numbers.First ? " L" : " R" : "")}") with { Strong = true };
    }

    // A lead that bears the name of its box and port needs no words.
    private static Cell Unless(string usual, Cell label) => label.Text == usual ? Cell.Blank : label;

    private static Cell Lead(IEnumerable<Address> patched, Plan plan) => LabelOf(patched.Select(address => Address.Of("link") / address.Text), plan);

    private static Cell LabelOf(IEnumerable<Address> links, Plan plan) =>
        Cell.Of(string.Join(", ", links.Select(plan.Cables.Of).OfType<Run>().Select(run => run.Label).Distinct(StringComparer.Ordinal)));
}
