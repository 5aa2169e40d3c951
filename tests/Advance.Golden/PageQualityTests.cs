using System.Globalization;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using Advance.Sheets;

namespace Advance.Golden;

/// <summary>What makes a page a bad page, whatever stands on it; the limits are the design's own.</summary>
public sealed class PageQualityTests
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

    // 7 pt on a desk, 10 pt where one stands or holds a torch.
    private static int Least(TypeClass type) => type == TypeClass.Desk ? 7_000 : 10_000;

    private static double Fill(Page page)
    {
        var strips = page.Strips.Where(placed => !placed.IsRepeated).ToList();
        return strips.Count == 0 ? 0 : strips.Sum(placed => (double)placed.Strip.Height) / (page.Frame.InnerBottom - page.Strips[0].Y);
    }

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
