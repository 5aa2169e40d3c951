using Advance.Paper;
using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Layout;

public sealed class TablePagesTests
{
    [Fact]
    public void A_table_repeats_its_head_and_splits_no_row() =>
        Assert.Equal(
            """
            page 1: head, r1, r2, r3
            page 2: (head), r4, r5, r6
            page 3: (head), r7, r8
            """.ReplaceLineEndings("\n"),
            Sketch(Plain(8)));

    [Fact]
    public void A_group_goes_on_under_its_own_head_again() =>
        Assert.Equal(
            """
            page 1: head, Power, r1, r2
            page 2: (head), (Power), r3, r4
            """.ReplaceLineEndings("\n"),
            Sketch([Rows(4) with { Head = T("Power") }]));

    [Fact]
    public void A_group_does_not_begin_with_a_lone_row_at_the_foot() =>
        Assert.Equal(
            """
            page 1: head, r1, r2
            page 2: (head), Sound, r1, r2
            """.ReplaceLineEndings("\n"),
            Sketch([Rows(2), Rows(2) with { Head = T("Sound") }]));

    [Fact]
    public void A_companion_stays_with_its_row() =>
        Assert.Equal(
            """
            page 1: head, r1, r2
            page 2: (head), r3, with
            """.ReplaceLineEndings("\n"),
            Sketch([new RowGroup([Row("r1"), Row("r2"), Row("r3"), Row("with") with { Kind = RowKind.Sub }])]));

    [Fact]
    public void Many_companions_are_parted_from_their_row_where_that_spares_a_page() =>
        Assert.Equal(
            """
            page 1: head, r1, r2, a
            page 2: (head), b, c, r3
            """.ReplaceLineEndings("\n"),
            Sketch([new RowGroup([Row("r1"), Row("r2"), Companion("a"), Companion("b"), Companion("c"), Row("r3")])]));

    [Fact]
    public void Joined_rows_are_not_parted() =>
        Assert.Equal(
            """
            page 1: head, r1, r2
            page 2: (head), left, right
            """.ReplaceLineEndings("\n"),
            Sketch([new RowGroup([Row("r1"), Row("r2"), Row("left") with { JoinsNext = true }, Row("right")])]));

    [Fact]
    public void A_total_is_not_alone() =>
        Assert.Equal(
            """
            page 1: head, r1, r2
            page 2: (head), r3, total
            """.ReplaceLineEndings("\n"),
            new Laid(Doc(OneSheet(TableOf(Plain(3)) with { Foot = [Row("total") with { Kind = RowKind.Total }] }))).Sketch());

    [Fact]
    public void A_heading_stands_on_the_page_of_what_it_heads() =>
        Assert.Equal(
            """
            page 1: head, r1, r2, r3
            page 2: Next, head, r1
            """.ReplaceLineEndings("\n"),
            new Laid(Doc(OneSheet(TableOf(Plain(3)), new Heading(1, T("Next")), TableOf(Plain(1))))).Sketch());

    [Fact]
    public void A_few_rows_on_a_last_page_are_pulled_in()
    {
        // So many small rows fit on a page as they are; two more are worth a little white.
        var fits = 1;
        while (new Laid(Doc(OneSheet(TableOf([Small(fits + 1)])))).Layout.Pages.Count == 1 && fits < 200)
        {
            fits++;
        }

        Assert.InRange(fits, 30, 80);
        var usual = new Laid(Doc(OneSheet(TableOf([Small(10)])))).Layout.Pages[0].Strips[^1].Strip.Height;
        var tight = new Laid(Doc(OneSheet(TableOf([Small(fits)])))).Layout.Pages[0].Strips[^1].Strip.Height;
        Assert.True(tight < usual);
    }

    [Fact]
    public void A_row_of_two_pages_is_cut_between_its_lines_and_told()
    {
        var laid = new Laid(Doc(OneSheet(TableOf([new RowGroup([Tall("r1", 100)])]))));
        Assert.Equal(2, laid.Layout.Pages.Count);
        Assert.Equal(FaultKind.TallerThanPage, Assert.Single(laid.Faults).Kind);
        Assert.Equal(Enumerable.Range(1, 100).Select(i => $"line{i}"), laid.Words().Where(w => w.StartsWith("line", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_empty_table_says_so_under_its_head() =>
        Assert.Equal("page 1: head, nothing", new Laid(Doc(OneSheet(TableOf([]) with { WhenEmpty = T("nothing to pull") }))).Sketch());

    [Fact]
    public void A_cell_too_many_is_a_fault_and_left_out()
    {
        var laid = new Laid(Doc(OneSheet(TableOf([new RowGroup([R("a", "b")])]))));
        Assert.Equal(FaultKind.TooManyCells, Assert.Single(laid.Faults).Kind);
        Assert.DoesNotContain("b", laid.Words());
    }

    private static string Sketch(IReadOnlyList<RowGroup> groups) => new Laid(Doc(OneSheet(TableOf(groups)))).Sketch();

    private static Table TableOf(IReadOnlyList<RowGroup> groups) => new([Col("head")], groups);

    private static IReadOnlyList<RowGroup> Plain(int rows) => [Rows(rows)];

    private static RowGroup Rows(int count) => new([.. Enumerable.Range(1, count).Select(i => Row($"r{i}"))]);

    private static RowGroup Small(int count) => new([.. Enumerable.Range(1, count).Select(i => R($"r{i}"))]);

    /// <summary>A row so tall that three of them, but not four, stand on an A4 page under a head.</summary>
    private static Row Row(string name) => Tall(name, 16);

    private static Row Companion(string name) => Row(name) with { Kind = RowKind.Sub };

    private static Row Tall(string name, int lines)
    {
        var text = new List<Inline> { new Text(name) };
        for (var i = 1; i <= lines; i++)
        {
            text.AddRange([new LineBreak(), new Text($"line{i}")]);
        }

        return R(new Cell(text));
    }
}
