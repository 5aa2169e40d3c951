using System.Text.RegularExpressions;
using Advance.Paper;
using Advance.Paper.Tree;
using Advance.Tests.Paper.Examples;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Html;

public sealed class HtmlTests
{
    [Fact]
    public void Numbers_and_days_carry_their_value()
    {
        var html = Print(OneSheet(new Paragraph(
        [
            new Datum("1 234,5 kg", new NumberValue(1234.5, "kg")),
            new Datum("Sat 12 Sep", new DateValue(new DateOnly(2026, 9, 12))),
            new Datum("eight", new TimeValue(new TimeOnly(20, 0))),
            new Datum("then", new MomentValue(new DateTime(2026, 9, 12, 23, 30, 0))),
        ])));
        Assert.Contains("<data value=\"1234.5\" class=\"whole\">1 234,5 kg</data>", html, StringComparison.Ordinal);
        Assert.Contains("<time datetime=\"2026-09-12\" class=\"whole\">Sat 12 Sep</time>", html, StringComparison.Ordinal);
        Assert.Contains("<time datetime=\"20:00\" class=\"whole\">eight</time>", html, StringComparison.Ordinal);
        Assert.Contains("<time datetime=\"2026-09-12T23:30\" class=\"whole\">then</time>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_tick_box_says_what_it_is_for()
    {
        var html = Print(HarvestSupper.Document);
        var boxes = Regex.Matches(html, "<label class=\"tick\"><input[^>]*/>([^<]*)</label>");
        Assert.NotEmpty(boxes);
        Assert.All(boxes, b => Assert.True(b.Value.Contains("aria-label=", StringComparison.Ordinal) || b.Groups[1].Length > 0, b.Value));
    }

    [Fact]
    public void Nothing_is_fetched()
    {
        var html = Print(HarvestSupper.Document);
        Assert.DoesNotContain("src=\"http", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<link", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"url\((?!data:|#)", html);
        Assert.Contains("default-src &#39;none&#39;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Elements_are_closed_in_the_order_in_which_they_were_opened()
    {
        var open = new Stack<string>();
        string[] empty = ["meta", "input", "br", "hr"];
        foreach (Match tag in Regex.Matches(Print(HarvestSupper.Document), @"<(/?)([a-z0-9]+)[^>]*?(/?)>"))
        {
            if (tag.Groups[1].Length > 0)
            {
                Assert.Equal(open.Pop(), tag.Groups[2].Value);
            }
            else if (tag.Groups[3].Length == 0 && !empty.Contains(tag.Groups[2].Value))
            {
                open.Push(tag.Groups[2].Value);
            }
        }

        Assert.Empty(open);
    }

    [Fact]
    public void A_picture_is_told_in_words_and_drawn_to_the_same_places_as_on_paper()
    {
        var html = Print(HarvestSupper.Document);
        Assert.Contains("role=\"img\" aria-label=\"The stage from above", html, StringComparison.Ordinal);
        var laid = new Laid(HarvestSupper.Document);
        var picture = laid.Layout.Pictures.Values.First();
        var run = picture.Marks.OfType<Advance.Paper.Layout.RunMark>().First(r => r.Text() == "SB1");
        Assert.Matches($"""<text y="{run.Baseline / 1000.0:0.##}"[^>]*><tspan x="{run.X / 1000.0:0.##}">SB1</tspan>""", html);
    }

    [Fact]
    public void Text_of_a_template_is_the_companys_own_but_does_not_end_its_element()
    {
        var html = Printer.Print(Doc(OneSheet()), new PrintOptions { Pdf = false, Workbook = false, StyleSheet = "p{color:red}</style><b>", Script = "let a='</script>'" }).Html!;
        Assert.Contains("p{color:red}", html, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(html, "</style"));
        // The page's own script, and the company's.
        Assert.Equal(2, Regex.Count(html, "</script"));
    }

    private static string Print(Document document) => Printer.Print(document, new PrintOptions { Pdf = false, Workbook = false }).Html!;

    private static string Print(Sheet sheet) => Print(Doc(sheet));
}
