using Advance.Paper;
using Advance.Paper.Layout;
using Advance.Tests.Paper.Examples;
using UglyToad.PdfPig;

namespace Advance.Tests.Paper;

public sealed class HorrorsTests
{
    private static readonly Lazy<Printing> Printed = new(() => Printer.Print(Horrors.Document));

    [Fact]
    public void All_of_it_is_printed()
    {
        Assert.NotNull(Printed.Value.Html);
        Assert.NotNull(Printed.Value.Workbook);
        using var pdf = PdfDocument.Open(Printed.Value.Pdf!);
        Assert.Equal(Printed.Value.PageCount, pdf.NumberOfPages);
    }

    [Fact]
    public void What_could_not_be_printed_as_it_stands_is_told()
    {
        var kinds = Printed.Value.Faults.Select(f => (f.Sheet, f.Kind)).Distinct().ToList();
        Assert.Contains(("words", FaultKind.MissingGlyph), kinds);
        Assert.Contains(("tall", FaultKind.TallerThanPage), kinds);
        Assert.Contains(("deep", FaultKind.TooDeep), kinds);
        Assert.DoesNotContain(kinds, k => k.Sheet is "one-column" or "forty-columns" or "empty" or "one-spot" or "nothing");
    }

    [Fact]
    public void Four_thousand_rows_keep_their_order_and_their_head()
    {
        var pages = new Laid(Horrors.Document).Layout.Pages.Where(p => p.Sheet.Id == "one-column").ToList();
        Assert.InRange(pages.Count, 80, 130);
        Assert.All(pages.Skip(1), p => Assert.True(p.Strips[0].IsRepeated));
        var words = pages.SelectMany(p => p.Strips).Where(s => !s.IsRepeated).SelectMany(s => s.Strip.Marks).OfType<RunMark>().Select(r => r.Text()).Skip(1);
        Assert.Equal(Enumerable.Range(1, 4000).Select(i => $"{i}"), words);
    }

    [Fact]
    public void Two_hundred_symbols_are_all_named_beside_them_by_a_leader_or_by_number()
    {
        var set = new Laid(Horrors.Document).Layout.Pictures.Values.Single(p => p.Title == "200 symbols");
        Assert.Equal(200, set.Labels.Count);
        var placed = set.Labels.Where(l => !l.Box.IsEmpty).ToList();
        for (var i = 0; i < placed.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.False(placed[i].Box.Meets(placed[j].Box));
            }
        }

        Assert.InRange(placed.Count, 180, 200);
    }

    [Fact]
    public void It_is_printed_again_to_the_same_bytes()
    {
        var again = Printer.Print(Horrors.Document);
        Assert.Equal(Printed.Value.Pdf, again.Pdf);
        Assert.Equal(Printed.Value.Html, again.Html);
        Assert.Equal(Printed.Value.Workbook, again.Workbook);
    }
}

