using Advance.Paper;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Layout;

public sealed class WideTableTests
{
    [Fact]
    public void A_table_too_wide_for_the_short_edge_turns_its_sheet()
    {
        var laid = new Laid(Doc(OneSheet(Wide(11))));
        Assert.True(laid.Layout.Pages[0].Frame.Width > laid.Layout.Pages[0].Frame.Height);
        Assert.Equal(9500, BodySize(laid));
        Assert.Empty(laid.Faults);
    }

    [Fact]
    public void Then_it_steps_down_a_size()
    {
        var laid = new Laid(Doc(OneSheet(Wide(14))));
        Assert.True(laid.Layout.Pages[0].Frame.Width > laid.Layout.Pages[0].Frame.Height);
        Assert.InRange(BodySize(laid), 7000, 9000);
        Assert.Empty(laid.Faults);
    }

    [Fact]
    public void Then_it_is_split_and_each_part_has_the_key()
    {
        var laid = new Laid(Doc(OneSheet(Wide(40))));
        var heads = laid.Words().Count(w => w == "key-");
        Assert.InRange(heads, 3, 6);
        for (var i = 1; i < 40; i++)
        {
            Assert.Single(laid.Words(), $"abcdefgh{i:00}");
        }

        Assert.Empty(laid.Faults);
    }

    [Fact]
    public void When_all_fails_words_are_cut_and_it_is_told()
    {
        var word = new string('w', 400);
        var laid = new Laid(Doc(OneSheet(new Table([Col("key-column"), Col("other")], [new RowGroup([R("a", word)])]))));
        Assert.Equal(FaultKind.TableTooWide, Assert.Single(laid.Faults).Kind);
        Assert.Contains(word, string.Concat(laid.Words()), StringComparison.Ordinal);
        Assert.All(Runs(laid), r => Assert.True(r.X + r.Width <= laid.Layout.Pages[0].Frame.InnerWidth));
    }

    [Fact]
    public void No_size_is_under_what_its_class_allows()
    {
        foreach (var type in Enum.GetValues<TypeClass>())
        {
            foreach (var step in new[] { false, true })
            {
                Assert.True(TypeScale.For(type, step).Small >= (type == TypeClass.Desk ? 7000 : 10_000));
            }
        }
    }

    private static Table Wide(int columns) => new(
        [Col("key-column") with { IsKey = true }, .. Enumerable.Range(1, columns - 1).Select(i => Col($"c{i}"))],
        [new RowGroup([R(["k", .. Enumerable.Range(1, columns - 1).Select(i => $"abcdefgh{i:00}")])])]);

    private static IEnumerable<RunMark> Runs(Laid laid) => laid.Layout.Pages.SelectMany(p => p.Strips).SelectMany(s => s.Strip.Marks).OfType<RunMark>();

    private static int BodySize(Laid laid) => Runs(laid).First(r => r.Words[0].Word.Text == "k").Style.Size;
}
