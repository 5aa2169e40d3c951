using Advance.Paper.Tree;

namespace Advance.Tests.Sheets.Markup;

public sealed class BlockTests
{
    public static TheoryData<string, Block> Written { get; } = new()
    {
        { "<p id=\"a\" data-align=\"right\">x</p>", new Paragraph([new Text("x")]) { Align = Align.Right, Id = "a" } },
        { "<p class=\"poster\" data-mm=\"40\">FOH</p>", new Poster("FOH", 40) },
        { "<ul> <li>a</li> <li><strong>b</strong></li> </ul>", new ItemList([[new Text("a")], [new Text("b", TextStyle.Strong)]]) },
        { "<ol><li/></ol>", new ItemList([[]], Numbered: true) },
        { "<hr/>", new Rule() },
        { "<hr class=\"page-break\"/>", new PageBreak() },
        { "<div class=\"space\" data-mm=\"5\"/>", new Space(5) },
        { "<div class=\"keep\" id=\"k\"><hr/><hr/></div>", new KeepTogether([new Rule(), new Rule()]) { Id = "k" } },
        {
            "<div class=\"columns\"><div data-share=\"2\"><hr/></div><div/></div>",
            new Columns([new ColumnsPart(2, [new Rule()]), new ColumnsPart(1, [])])
        },
        {
            "<dl data-columns=\"3\"><dt>a</dt><dd>b</dd><dt>c</dt><dd data-verdict=\"fails\">d</dd></dl>",
            new Pairs([new Pair([new Text("a")], [new Text("b")]), new Pair([new Text("c")], [new Text("d")]) { Verdict = Verdict.Fails }]) { Columns = 3 }
        },
        {
            "<aside class=\"danger\"><p>a</p><p>b</p><p>c</p></aside>",
            new Caution(Signal.Danger, [new Text("a")], [new Text("b")], [new Text("c")])
        },
        { "<aside class=\"warning\"><p>a</p><p>b</p></aside>", new Caution(Signal.Warning, [new Text("a")], [new Text("b")], []) },
        { "<aside class=\"caution\"><p>a</p><p>b</p></aside>", new Caution(Signal.Caution, [new Text("a")], [new Text("b")], []) },
        { "<aside class=\"stop\"><p>a</p><p>b</p></aside>", new Remark(RemarkWeight.Stop, [new Text("a")]) { Detail = [new Text("b")] } },
        { "<aside class=\"concern\"><p>a</p></aside>", new Remark(RemarkWeight.Concern, [new Text("a")]) },
        { "<aside class=\"note\"><p>a</p></aside>", new Remark(RemarkWeight.Note, [new Text("a")]) },
        {
            "<figure data-drawing=\"example\" data-most-mm=\"80\" data-act=\"x\"><figcaption>c</figcaption></figure>",
            new Picture(Reading.Scene, [new Text("c")]) { MostHeightMm = 80 }
        },
    };

    [Theory]
    [MemberData(nameof(Written))]
    public void Each_block_has_its_element(string markup, Block block) =>
        Assert.Equal(TreeText.Of(block), TreeText.Of(Assert.Single(Reading.Blocks(markup))));

    [Theory]
    [InlineData("<dd data-verdict=\"plain\"><span class=\"judged\" data-verdict=\"fails\">5</span></dd>", Verdict.Fails)]
    [InlineData("<dd data-verdict=\"fails\"><span class=\"judged\" data-verdict=\"cannot-be-judged\">5</span></dd>", Verdict.Fails)]
    [InlineData("<dd><strong><span class=\"judged\" data-verdict=\"cannot-be-judged\">5</span></strong></dd>", Verdict.CannotBeJudged)]
    [InlineData("<dd><a href=\"#x\"><span class=\"judged\" data-verdict=\"fails\">5</span></a></dd>", Verdict.Fails)]
    public void The_worst_verdict_in_a_field_is_that_of_the_field(string field, Verdict verdict)
    {
        var pair = Assert.Single(Reading.Block<Pairs>($"<dl><dt>a</dt>{field}</dl>").Items);
        Assert.Equal(verdict, pair.Verdict);
        Assert.DoesNotContain(pair.Text, piece => piece is Tag);
    }

    [Fact]
    public void A_drawing_is_made_for_what_it_is_told() =>
        Assert.Same(Reading.Scene, Reading.Block<Picture>("<figure data-drawing=\"stage-plot\" data-act=\"The Lot\"/>").Scene);
}
