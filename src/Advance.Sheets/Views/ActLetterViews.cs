using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the letters to the acts.</summary>
internal static class ActLetterViews
{
    private const string Everybody = "all";

    /// <summary>One for each act; null where none plays.</summary>
    public static ActLettersView? Of(Plan plan)
    {
        var cells = new Cells(plan);
        var letters = plan.Brief.Gig.Acts.Select(act => LetterOf(act, plan, cells)).ToList();
        return letters.Count > 0 ? new ActLettersView(letters) : null;
    }

    private static ActLetterView LetterOf(Act act, Plan plan, Cells cells)
    {
        var lines = plan.Patch.Lines.Where(line => line.Act == act.Name).ToList();
        return new ActLetterView(
            $"act-letter-{Slug.Of(act.Name)}",
            act.Name,
            [.. Facts(act, lines, plan, cells)],
            [.. Times(act, plan, cells)],
            [.. Brought(act, lines, cells)],
            [.. Ours(act, plan)],
            [.. act.Mixes.OrderBy(mix => mix.Numbers).Select(mix => MixOf(mix, plan, cells))],
            [.. plan.Brief.OpenQuestions.Where(doubt => doubt.Who == act.Name).Select(doubt => QuestionOf(doubt, plan, cells))],
            Cells.Head(lines.Aggregate(Doubts.None, (sum, line) => sum.With(line.RestsOn))));
    }

    private static IEnumerable<PairView> Facts(Act act, List<PatchLine> lines, Plan plan, Cells cells)
    {
        yield return new PairView("On stage", cells.Of(act.People));
        yield return new PairView("Sets", Cell.Of(string.Join(", ", act.Sets.Where(set => set.IsKnown).Select(set => $"{set.Value.Start}–{set.Value.End}"))));
        yield return new PairView("Lines", Cell.Number(lines.Count));
        yield return new PairView("Mixes", Cell.Number(act.Mixes.Sum(mix => mix.Numbers.Count)));
        foreach (var stage in plan.Brief.Gig.Stages.Take(1))
        {
            yield return new PairView("Stage", cells.Of(stage.Size));
            yield return new PairView("Height", cells.Of(stage.Height));
        }
    }

    // An act's day is the show day, and begins with the first line that names it; what is for all before that is the crew's.
    private static IEnumerable<ActLetterView.Time> Times(Act act, Plan plan, Cells cells) => ScheduleDays.OfShow(plan.Brief.Gig)
        .SkipWhile(row => row.Who?.Or("") != act.Name)
        .Where(row => row.Who is { } who && who.Is(out var name) && (name == act.Name || name == Everybody))
        .Select(row => (At: row.Time.Or(default), Line: new ActLetterView.Time(cells.Of(row.Time), Cell.Of(row.What), Cell.Of(row.Where))))
        .Concat(act.Sets.Where(set => set.IsKnown).Select(set => (At: set.Value.Start, Line: new ActLetterView.Time(Cell.Of(set.Value.Start.ToString()), Cell.Of($"Your set, until {set.Value.End}"), Cell.Of("stage")))))
        .OrderBy(time => time.At)
        .Select(time => time.Line);

    private static IEnumerable<Cell> Brought(Act act, List<PatchLine> lines, Cells cells)
    {
        foreach (var item in act.Brings)
        {
            yield return Cell.Of(item.Count > 1 ? $"{item.Count} × {item.Item}" : item.Item);
        }

        foreach (var line in lines.Where(line => line.Row.From is { } from && from.Is(out var owner) && owner.Kind == OwnerKind.Act))
        {
            yield return Cell.Of($"{line.Device?.Kind?.Name ?? line.Device?.Item ?? "source"} for {line.Source}, channel {line.Channel}") with { Tbc = line.Row.From?.Doubt is { } doubt ? cells.Note(doubt) : null };
        }
    }

    private static IEnumerable<ActLetterView.Brought> Ours(Act act, Plan plan)
    {
        var own = $"patch/{act.Name}/";
        return plan.Patch.Pieces
            .Where(piece => piece.IsPulled && piece.Why is Need.AskedFor && piece.Address.Text.StartsWith(own, StringComparison.Ordinal))
            .GroupBy(piece => piece.Item, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new ActLetterView.Brought(
                Cell.Number(group.Count()), Cell.Of(group.First().Kind?.Name ?? group.Key), Cell.Of(string.Join(", ", group.Select(piece => piece.Name).Distinct(StringComparer.Ordinal)))));
    }

    private static string NameOf(string item, Plan plan) => plan.Brief.Stock.Find(item)?.Name ?? item;

    private static ActLetterView.Mix MixOf(MixRow mix, Plan plan, Cells cells) => new(
        Cell.Of(mix.Numbers.ToString()),
        Cell.Of(mix.For),
        mix.With is { } with && with.Is(out var item) ? Cell.Of(item.Count > 1 ? $"{item.Count} × {NameOf(item.Item, plan)}" : NameOf(item.Item, plan)) with { Tbc = with.Doubt is { } doubt ? cells.Note(doubt) : null } : Cell.Blank,
        Cell.Of(mix.Wants));

    private static ActLetterView.Question QuestionOf(Doubt doubt, Plan plan, Cells cells) => new(
        doubt.By is not { } by ? Cell.Blank : plan.ShowDate is { } near ? Cell.Date(by.Resolve(near)) : Cell.Of(cells.Note(doubt with { Who = null })),
        Cell.Of(QuestionWords.Of(doubt, plan)),
        Cell.Of(doubt.Written is "act" ? "you" : doubt.Written ?? "") with { Tbc = "" });
}
