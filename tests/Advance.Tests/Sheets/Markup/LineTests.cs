using Advance.Paper.Tree;

namespace Advance.Tests.Sheets.Markup;

public sealed class LineTests
{
    public static TheoryData<string, Inline[]> Lines { get; } = new()
    {
        { "a", [new Text("a")] },
        { "", [] },
        { "  a\n   b  ", [new Text("a b")] },
        { "a <strong>b</strong> c", [new Text("a "), new Text("b", TextStyle.Strong), new Text(" c")] },
        { "a<strong> b </strong>c", [new Text("a"), new Text(" b ", TextStyle.Strong), new Text("c")] },
        { "<small>a <strong>b</strong></small>", [new Text("a ", TextStyle.Quiet), new Text("b", TextStyle.Quiet | TextStyle.Strong)] },
        { "<span class=\"large\">20:45</span>", [new Text("20:45", TextStyle.Large)] },
        { "a <br/> b", [new Text("a"), new LineBreak(), new Text("b")] },
        { "a<br></br>b", [new Text("a"), new LineBreak(), new Text("b")] },
        { "&#32;a&#32;", [new Text(" a ")] },
        { "&lt;b&gt; &amp; &quot;&apos;&#65;&#x1F3B8;", [new Text("<b> & \"'A\U0001F3B8")] },
        { "a<!-- no --> b", [new Text("a b")] },
        { "<!-- no -->", [] },
        { "<mark>a <!-- no -->b<!-- no -->c</mark>", [new Tag("a bc")] },
        { "<a class=\"page\" href=\"##x\"/>", [new PageOf("#x")] },
        { "<data value=\"-2.50\" data-unit=\"kg\" data-decimals=\"1\"> 2.5 </data> a", [new Datum("2.5", new NumberValue(-2.5, "kg") { Decimals = 1 }), new Text(" a")] },
        { "<strong><data value=\"1e3\">1000</data></strong>", [new Datum("1000", new NumberValue(1000), TextStyle.Strong)] },
        { "<data class=\"sum\" value=\"7\" data-unit=\"A\">7</data>", [new Datum("7", new SumValue(7, "A"))] },
        { "<time datetime=\"2026-09-12\">Sat</time>", [new Datum("Sat", new DateValue(new DateOnly(2026, 9, 12)))] },
        { "<time datetime=\"19:30\">half</time>", [new Datum("half", new TimeValue(new TimeOnly(19, 30)))] },
        { "<time datetime=\"2026-09-12T19:30:15\">x</time>", [new Datum("x", new MomentValue(new DateTime(2026, 9, 12, 19, 30, 15)))] },
        { "a <mark class=\"tbc\">TBC</mark><mark>NEW</mark>", [new Text("a "), new Tag("TBC"), new Tag("NEW")] },
        { "<input type=\"checkbox\"/> on", [new TickBox(), new Text(" on")] },
        { "<label><input type=\"checkbox\"/> tested</label>", [new TickBox("tested")] },
        { "by <span class=\"write\"/> at <span class=\"write\" data-mm=\"30.5\"/>", [new Text("by "), new WriteIn(), new Text(" at "), new WriteIn(30.5)] },
        { "<meter value=\"1.2\"/><meter value=\"0.5\" high=\"0.8\"/>", [new Bar(1.2), new Bar(0.5, 0.8)] },
        { "page <a class=\"page\" href=\"#day\"/>, <strong><a class=\"page\" href=\"#x\"/></strong>", [new Text("page "), new PageOf("day"), new Text(", "), new PageOf("x", TextStyle.Strong)] },
        { "see <a href=\"#day\"> the day</a> now", [new Text("see "), new Link("#day", [new Text("the day")]), new Text(" now")] },
        { "<span class=\"judged\" data-verdict=\"plain\">5</span> A", [new Text("5 A")] },
        { "<span class=\"judged\" data-verdict=\"fails\">5</span> A", [new Text("5 "), new Tag("over its limit"), new Text(" A")] },
        { "<span class=\"judged\" data-verdict=\"cannot-be-judged\">?</span>", [new Text("? "), new Tag("cannot be judged")] },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void Each_piece_of_a_line_has_its_element(string markup, Inline[] pieces) => Assert.Equal(TreeText.Of(pieces), TreeText.Of(Reading.Line(markup)));

    [Theory]
    [InlineData("h1")]
    [InlineData("h2")]
    [InlineData("h3")]
    public void A_heading_has_its_level(string name)
    {
        var heading = Reading.Block<Heading>($"<{name} id=\"power\">Power</{name}>");
        Assert.Equal((name[1] - '0', "power"), (heading.Level, heading.Id));
    }

    [Fact]
    public void A_sheet_has_its_names_its_readers_and_its_setup()
    {
        var sheet = Reading.Sheet("<section class=\"sheet\" id=\"card\" title=\"Card &amp; lid\" data-for=\"the crew\" data-readers=\" crew  shop \" data-type=\"tape-up\" data-paper=\"a3\" data-orientation=\"landscape\"/>");
        Assert.Equal(("card", "Card & lid", "the crew"), (sheet.Id, sheet.Title, sheet.For));
        Assert.Equal(["crew", "shop"], sheet.Readers);
        Assert.Equal(new SheetSetup(PageSize.A3, Orientation.Landscape, TypeClass.TapeUp), sheet.Setup(PageSize.Letter));
        Assert.Empty(sheet.Blocks);
    }

    [Fact]
    public void What_a_sheet_does_not_say_is_as_usual()
    {
        var sheet = Reading.Sheet("<section class=\"sheet\" id=\"a\" title=\"A\" data-for=\"x\" data-readers=\"all\"/>");
        Assert.Equal(new SheetSetup(PageSize.Letter), sheet.Setup(PageSize.Letter));
    }

    [Fact]
    public void A_template_may_write_several_sheets()
    {
        const string Two = "\n <section class=\"sheet\" id=\"a\" title=\"A\" data-for=\"x\" data-readers=\"all\"/>\n<section class=\"sheet\" id=\"b\" title=\"B\" data-for=\"x\" data-readers=\"all\"/>\n";
        Assert.Equal(["a", "b"], Reading.Read(Two).Sheets.Select(sheet => sheet.Id));
        Assert.Empty(Reading.Read(Two).Faults);
    }

    [Fact]
    public void A_template_without_a_sheet_is_a_fault() =>
        Assert.Equal("t:1:1: There is no sheet in this template. Write `<section class=\"sheet\" …>`.", Assert.Single(Reading.Read("  ").Faults).ToString());
}
