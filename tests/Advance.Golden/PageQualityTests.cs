using System.Globalization;
using System.Text.RegularExpressions;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using Advance.Sheets;

namespace Advance.Golden;

/// <summary>What makes a page a bad page, whatever stands on it; the limits are the design's own.</summary>
public sealed partial class PageQualityTests
{
    private const double LeastFill = 0.15;
    private const double MostBlank = 0.4;
    private const double LeastInside = 0.5;
    private const double LeastLast = 0.4;

    private static readonly string[] RiggersTables = ["hoist-table", "point-loads", "stability"];

    // A column whose longest words are shorter than this takes no room that anybody misses.
    private const int WideColumn = 24;

    public static TheoryData<string> Gigs => Samples.Gigs;

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_sheet_ends_with_a_nearly_empty_page(string gig)
    {
        var bad = LaidOut(gig).Sheets
            .Where(pages => pages.Count > 1 && Fill(pages[^1]) < LeastFill)
            .Select(pages => string.Create(CultureInfo.InvariantCulture, $"{pages[0].Sheet.Id}: page {pages.Count}, {Fill(pages[^1]):P0} full"));
        Assert.Empty(bad);
    }

    // Those that are read where it is dark, and that a venue files: nobody leafs through half pages of them.
    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_page_of_the_riggers_tables_is_half_empty_that_another_follows(string gig)
    {
        var bad = LaidOut(gig).Sheets
            .Where(pages => Array.IndexOf(RiggersTables, pages[0].Sheet.Id) >= 0)
            .SelectMany(pages => pages.Take(pages.Count - 1).Select((page, index) => (page, index)))
            .Where(one => Fill(one.page) < LeastInside)
            .Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.page.Sheet.Id}: page {one.index + 1}, {Fill(one.page):P0} full"));
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_page_of_the_riggers_tables_holds_cautions_and_signatures_alone(string gig)
    {
        var bad = LaidOut(gig).Sheets
            .Where(pages => Array.IndexOf(RiggersTables, pages[0].Sheet.Id) >= 0)
            .SelectMany(pages => pages.Select((page, index) => (page, index)))
            .Where(one => one.index > 0 && Fill(one.page) < LeastLast && one.page.Strips.All(placed => placed.Strip.Group == 0))
            .Select(one => $"{one.page.Sheet.Id}: page {one.index + 1}");
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void The_day_sheet_is_one_page_and_one_more_for_other_days(string gig) =>
        Assert.InRange(LaidOut(gig).Sheets[0].Count, 1, Samples.Plan(gig).Brief.Gig.Days.Count > 1 ? 2 : 1);

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_row_stands_alone_on_a_page(string gig)
    {
        var bad = LaidOut(gig).Sheets
            .SelectMany(pages => pages.Select((page, index) => (page, index)))
            .Where(one => one.index > 0)
            .Where(one => one.page.Strips.Where(placed => !placed.IsRepeated).Select(placed => placed.Strip).ToList() is [{ Group: > 0 }])
            .Select(one => $"{one.page.Sheet.Id}: page {one.index + 1}");
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_letter_is_smaller_than_the_least_of_its_class(string gig)
    {
        var bad = LaidOut(gig).Sheets
            .SelectMany(pages => pages)
            .SelectMany(page => page.Strips.SelectMany(placed => placed.Strip.Marks).OfType<RunMark>()
                .Where(run => run.Style.Size < Least(page.Sheet.Setup.Class))
                .Select(run => $"{page.Sheet.Id}: {run.Style.Size} \"{run.Text()}\""))
            .Distinct();
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_wide_column_is_mostly_empty(string gig)
    {
        var bad = Composed(gig).Document.Sheets
            .SelectMany(sheet => sheet.Blocks.SelectMany(Tables).SelectMany(Blank).Select(column => $"{sheet.Id}: {column}"));
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_page_holds_warnings_alone(string gig)
    {
        var bad = LaidOut(gig).Sheets
            .SelectMany(pages => pages.Select((page, index) => (Page: page, Number: index + 1, Strips: page.Strips.Where(placed => !placed.IsRepeated).Select(placed => placed.Strip).ToList())))
            .Where(one => one.Number > 1 && one.Strips.TrueForAll(strip => strip.IsAside) && one.Strips.Exists(strip => strip.IsWarning))
            .Select(one => $"{one.Page.Sheet.Id}: page {one.Number}");
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_line_begins_with_the_unit_of_a_number_on_the_line_above(string gig)
    {
        var bad = Runs(gig).Where(one => one.Above is { } above && char.IsAsciiDigit(above.Text()[^1]) && Unit().IsMatch(one.Run.Text()))
            .Select(one => $"{one.Sheet}: {one.Above!.Text()} / {one.Run.Text()}");
        Assert.Empty(bad);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Nothing_that_there_is_one_of_is_called_several(string gig) =>
        Assert.Empty(Runs(gig).Where(one => OneOfSeveral().IsMatch(one.Run.Text())).Select(one => $"{one.Sheet}: {one.Run.Text()}"));

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Paper_in_US_units_says_no_metric_ones(string gig)
    {
        // Plugs are named by their millimetres everywhere; workings are in units of the SI and say so.
        var isUs = Samples.Plan(gig).Brief.Company.Units == Domain.Wording.UnitSystem.UsCustomary;
        Assert.Empty(Runs(gig).Where(one => isUs && one.Sheet != "workings" && Metric().IsMatch(one.Run.Text().Replace("3.5 mm", "", StringComparison.Ordinal))).Select(one => $"{one.Sheet}: {one.Run.Text()}"));
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void Case_labels_go_three_to_a_page(string gig)
    {
        // Each label is a poster, its words, and a line to cut along. What its TBC may change is told on the first page.
        var pages = LaidOut(gig).Sheets.Single(pages => pages[0].Sheet.Id == "case-labels");
        Assert.All(pages.SkipLast(1), page => Assert.InRange(page.Strips.Count(placed => placed.Strip.Marks.OfType<RunMark>().Any(run => run.Style.Size > 60_000)), 3, int.MaxValue));
    }

    // 7 pt on a desk, 10 pt where one stands or holds a torch.
    private static int Least(TypeClass type) => type == TypeClass.Desk ? 7_000 : 10_000;

    private static double Fill(Page page)
    {
        var strips = page.Strips.Where(placed => !placed.IsRepeated).ToList();
        return strips.Count == 0 ? 0 : strips.Sum(placed => (double)placed.Strip.Height) / (page.Frame.InnerBottom - page.Strips[0].Y);
    }

    // Each run of words, and the one that begins at the same edge on the line above it.
    private static IEnumerable<(string Sheet, RunMark Run, RunMark? Above)> Runs(string gig)
    {
        foreach (var (sheet, strip) in LaidOut(gig).Sheets.SelectMany(pages => pages).SelectMany(page => page.Strips.Select(placed => (page.Sheet.Id, placed.Strip))))
        {
            var runs = strip.Marks.OfType<RunMark>().Where(run => run.Words.Length > 0).ToList();
            foreach (var run in runs)
            {
                // The first run of a line of a cell stands under the first of the line above.
                var over = runs.Where(other => other.X == run.X && other.Baseline < run.Baseline && run.Baseline - other.Baseline < 2 * run.Style.Size).MaxBy(other => other.Baseline);
                yield return (sheet, run, over is null ? null : runs.Where(other => other.Baseline == over.Baseline && other.X >= over.X && other.X < over.X + over.Width + (4 * run.Style.Size)).MaxBy(other => other.X));
            }
        }
    }

    [GeneratedRegex(@"^(m|ft|kg|lb|A|mA|V|kW|mm|°C)([ ,;.]|$)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Unit();

    [GeneratedRegex(@"(?<![0-9.,/:×-] ?)\b1 (lines|pieces|cases|joins|boxes|leads|pins|hands|points|fixtures|inputs|findings|notes|concerns|stops)\b", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OneOfSeveral();

    [GeneratedRegex(@"[0-9][ \u00A0](kg|m|mm|cm|km|kN|kNm|kPa|°C|m²|m³|l)\b", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Metric();

    private static IEnumerable<Table> Tables(Block block) => block switch
    {
        Table table => [table],
        Alongside alongside => [alongside.Table],
        Columns columns => columns.Parts.SelectMany(part => part.Blocks).SelectMany(Tables),
        KeepTogether keep => keep.Blocks.SelectMany(Tables),
        _ => [],
    };

    private static IEnumerable<string> Blank(Table table)
    {
        var rows = table.Groups.SelectMany(group => group.Rows).Where(row => row.Kind is RowKind.Normal or RowKind.Sub && row.Cells.All(cell => cell.Span == 1)).ToList();
        for (var column = 0; column < table.Columns.Count; column++)
        {
            var cells = rows.Select(row => column < row.Cells.Count ? row.Cells[column].Text : []).ToList();
            var blank = cells.Count(text => text.Count == 0);
            if (cells.Count > 4 && blank > MostBlank * cells.Count && cells.Max(Length) >= WideColumn)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{table.Columns[column].Key}, {blank} of {cells.Count} blank");
            }
        }
    }

    // Of its longest line.
    private static int Length(IReadOnlyList<Inline> text)
    {
        var (longest, line) = (0, 0);
        foreach (var piece in text)
        {
            line = piece is LineBreak ? 0 : line + (piece is Text words ? words.Value.Length : 0);
            longest = Math.Max(longest, line);
        }

        return longest;
    }

    private static DocumentLayout LaidOut(string gig)
    {
        var faults = new Paper.Faults();
        return DocumentLayout.LayOut(Composed(gig).Document, FaceSet.Of([], faults), new Paper.Wording(), faults);
    }

    private static Composition Composed(string gig)
    {
        var composed = Sheets.Composer.Compose(Samples.Plan(gig), PackageRequest.Everything, CompanyFolder.None);
        Assert.Empty(composed.Faults);
        return composed;
    }
}
