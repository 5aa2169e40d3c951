using Advance.Paper.Layout;
using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Layout;

public sealed class PairsTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_tag_that_cannot_be_parted_reaches_into_no_other_column(int columns)
    {
        var tagged = Enumerable.Range(1, 3).Select(number => new Pair(T($"Neutral to earth {number}"), [new Text("at the set"), new Tag("TBC Ambling Power Hire 11 Sep")]));
        var wordy = Enumerable.Range(1, 3 * (columns - 1)).Select(number => new Pair(T($"Supply {number}"), T("230/400 V three-phase 50 Hz, IEC, from its voltage, as its hirer has written")));
        var pairs = new Pairs([.. tagged, .. wordy]) { Columns = columns };
        var marks = new Laid(Doc(OneSheet(pairs) with { Setup = new SheetSetup(PageSize.A4, Orientation.Landscape) })).Layout.Pages.SelectMany(page => page.Strips).SelectMany(placed => placed.Strip.Marks).ToList();
        var tags = marks.OfType<BoxMark>().ToList();
        Assert.Equal(3, tags.Count);
        Assert.All(tags, tag => Assert.All(marks.OfType<RunMark>().Where(run => run.Top < tag.Y + tag.Height && run.Bottom > tag.Y), run => Assert.True(IsIn(run, tag) || IsBeside(run, tag))));
    }

    private static bool IsIn(RunMark run, BoxMark tag) => run.X >= tag.X && run.X + run.Width <= tag.X + tag.Width;

    private static bool IsBeside(RunMark run, BoxMark tag) => run.X >= tag.X + tag.Width || run.X + run.Width <= tag.X;
}
