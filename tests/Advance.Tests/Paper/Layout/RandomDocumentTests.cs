using Advance.Paper.Layout;
using Advance.Paper.Tree;
using CsCheck;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Layout;

/// <summary>What holds for every document, tried on documents drawn by lot.</summary>
public sealed class RandomDocumentTests
{
    private static readonly Gen<string> Word =
        Gen.OneOf(Gen.Char['a', 'z'].Array[1, 9].Select(c => new string(c)), Gen.Int[0, 9999].Select(i => $"{i}"), Gen.Const("stage-left/right"));

    private static readonly Gen<IReadOnlyList<Inline>> Line =
        Gen.Select(Word.Array[1, 14], Gen.Enum<TextStyle>()).Select((words, style) => (IReadOnlyList<Inline>)[new Text(string.Join(' ', words), style)]);

    private static readonly Gen<Block> Simple = Gen.OneOf(
        Line.Select(l => (Block)new Heading(1, l)),
        Line.Select(l => (Block)new Paragraph(l)),
        Line.Array[1, 5].Select(l => (Block)new ItemList(l)),
        Gen.Select(Gen.Select(Line, Line).Array[1, 7], Gen.Int[1, 4]).Select((pairs, columns) => (Block)new Pairs([.. pairs.Select(p => new Pair(p.Item1, p.Item2))]) { Columns = columns }),
        Line.Select(l => (Block)new Caution(Signal.Warning, l, l, [])),
        Gen.Const((Block)new Rule()),
        Gen.Double[0, 30].Select(mm => (Block)new Space(mm)),
        Gen.Const((Block)new PageBreak()));

    private static readonly Gen<Table> AnyTable =
        from columns in Gen.Int[1, 6]
        from groups in Gen.Select(Line, Gen.Select(Line.Array[0, columns], Gen.Enum<RowKind>()).Array[0, 25]).Array[0, 4]
        select new Table(
            [.. Enumerable.Range(0, columns).Select(i => Col($"head{i}"))],
            [.. groups.Select(g => new RowGroup([.. g.Item2.Select(r => new Row([.. r.Item1.Select(c => new Cell(c))]) { Kind = r.Item2 == RowKind.Hold ? RowKind.Normal : r.Item2 })]) { Head = g.Item1 })]);

    private static readonly Gen<Block> AnyBlock = Gen.Frequency(
        (5, Simple),
        (3, AnyTable.Select(t => (Block)t)),
        (1, Gen.Select(Simple.Array[1, 3], Simple.Array[1, 3]).Select((a, b) => (Block)new Columns([new ColumnsPart(1, a), new ColumnsPart(2, b)]))));

    private static readonly Gen<Sheet> AnySheet =
        from blocks in AnyBlock.Array[0, 8]
        from size in Gen.Enum<PageSize>()
        from turned in Gen.Enum<Orientation>()
        from type in Gen.Enum<TypeClass>()
        select OneSheet(blocks) with { Setup = new SheetSetup(size, turned, type) };

    [Fact]
    public void Each_letter_is_printed_once() => AnySheet.Sample(
        sheet =>
        {
            // Words may be cut where there is no room, but no letter is lost or printed twice.
            Assert.Equal(Letters(Told(sheet.Blocks)), Letters(new Laid(Doc(sheet)).Words()));
        },
        iter: 300);

    [Fact]
    public void Rows_of_a_table_stay_in_order() => AnyTable.Sample(
        table =>
        {
            var numbered = table with
            {
                Groups = [new RowGroup([.. table.Groups.SelectMany(g => g.Rows).Select((r, i) => r with { Cells = [C($"n{i}"), .. r.Cells] })])],
                Columns = [Col("n"), .. table.Columns],
            };
            var words = new Laid(Doc(OneSheet(numbered))).Words().Where(w => w[0] == 'n' && int.TryParse(w[1..], out _)).ToList();
            Assert.Equal(words.OrderBy(w => int.Parse(w[1..])), words);
        },
        iter: 200);

    [Fact]
    public void Strips_lie_in_the_body_and_on_no_other() => AnySheet.Sample(
        sheet =>
        {
            foreach (var page in new Laid(Doc(sheet)).Layout.Pages)
            {
                var top = PaperFrame.Top + page.Furniture.HeadHeight;
                foreach (var placed in page.Strips)
                {
                    Assert.True(placed.Y >= top);
                    top = placed.Y + placed.Strip.Height;
                }

                Assert.True(top <= page.Frame.InnerBottom - page.Furniture.FootHeight);
            }
        },
        iter: 300);

    [Fact]
    public void Words_stand_inside_of_their_strip() => AnySheet.Sample(
        sheet =>
        {
            foreach (var page in new Laid(Doc(sheet)).Layout.Pages)
            {
                foreach (var placed in page.Strips)
                {
                    foreach (var run in placed.Strip.Marks.OfType<RunMark>())
                    {
                        Assert.True(run.X >= 0 && run.X + run.Width <= page.Frame.InnerWidth, $"{run.X} {run.Width} {page.Frame.InnerWidth} {run.Text()}");
                        Assert.True(run.Top >= 0 && run.Bottom <= placed.Strip.Height, $"{run.Top} {run.Bottom} {placed.Strip.Height} {run.Text()}");
                    }
                }
            }
        },
        iter: 300);

    [Fact]
    public void A_group_keeps_its_head_and_its_first_two_rows_together() =>
        Gen.Int[2, 9].Array[1, 30].Sample(
            counts =>
            {
                var groups = counts.Select((n, g) => new RowGroup([.. Enumerable.Range(0, n).Select(i => R($"g{g}-r{i}"))]) { Head = T($"g{g}-head") });
                foreach (var page in new Laid(Doc(OneSheet(new Table([Col("a")], [.. groups])))).Layout.Pages)
                {
                    var last = page.Strips[^1].Strip.Marks.OfType<RunMark>().First().Text();
                    Assert.False(last.EndsWith("head", StringComparison.Ordinal) || last.EndsWith("-r0", StringComparison.Ordinal), last);
                }
            },
            iter: 100);

    [Fact]
    public void One_more_row_never_takes_fewer_pages() =>
        Gen.Select(Gen.Int[1, 160], Gen.Enum<TypeClass>(), Gen.Int[1, 3]).Sample(
            (count, type, lines) => Assert.True(Pages(count + 1, type, lines) >= Pages(count, type, lines)),
            iter: 300);

    [Fact]
    public void Rows_that_fit_on_one_page_are_on_one_page() =>
        Gen.Int[1, 35].Sample(count => Assert.Equal(1, Pages(count, TypeClass.Desk, 1)), iter: 20);

    private static int Pages(int count, TypeClass type, int lines)
    {
        var text = Enumerable.Repeat<Inline[]>([new Text("row"), new LineBreak()], lines).SelectMany(t => t).ToArray();
        var table = new Table([Col("a")], [new RowGroup([.. Enumerable.Range(0, count).Select(_ => R(C(text)))])]);
        return new Laid(Doc(OneSheet(table) with { Setup = new SheetSetup(Class: type) })).Layout.Pages.Count;
    }

    private static string Letters(IEnumerable<string> words) => string.Concat(words.SelectMany(w => w).Where(c => c != ' ').Order());

    private static IEnumerable<string> Told(IReadOnlyList<Block> blocks) => blocks.SelectMany(Told);

    private static IEnumerable<string> Told(Block block) => block switch
    {
        Heading heading => Plain(heading.Text),
        Paragraph paragraph => Plain(paragraph.Text),
        ItemList list => list.Items.SelectMany(i => Plain(i).Prepend("–")),
        Pairs pairs => pairs.Items.SelectMany(p => Plain(p.Name).Concat(Plain(p.Text))),
        Caution caution => Plain(caution.Happens).Concat(Plain(caution.Do)).Prepend("WARNING"),
        Columns columns => columns.Parts.SelectMany(p => Told(p.Blocks)),
        Table table => table.Columns.SelectMany(c => Plain(c.Head)).Concat(table.Groups.SelectMany(g => Plain(g.Head).Concat(g.Rows.SelectMany(r => r.Cells).SelectMany(c => Plain(c.Text))))),
        _ => [],
    };

    private static IEnumerable<string> Plain(IReadOnlyList<Inline> line) => line.OfType<Text>().Select(t => t.Value);
}

