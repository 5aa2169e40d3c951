namespace Advance.Tests.Sheets.Markup;

/// <summary>The mark <c>¦</c> stands before the place of the first fault and is taken out before reading.</summary>
public sealed class MarkupFaultTests
{
    private const string Head = "<colgroup><col data-key=\"a\"/><col data-key=\"b\"/></colgroup><thead><tr><th/><th/></tr></thead>";

    [Theory]
    [InlineData("¦<tabel/>", "There is no element `tabel`. Did you mean `table`?")]
    [InlineData("¦<P>x</P>", "There is no element `P`. Did you mean `p`?")]
    [InlineData("¦<script>x</script>", "There is no element `script`.")]
    [InlineData("<p ¦data-algin=\"left\"/>", "`p` has no `data-algin`. Did you mean `data-align`?")]
    [InlineData("<p ¦onclick=\"x\"/>", "`p` has no `onclick`. Known here: `id`, `data-align`.")]
    [InlineData("<p ¦style=\"color:red\"/>", "`p` has no `style`. Known here: `id`, `data-align`.")]
    [InlineData("<p ¦data-align=\"center\"/>", "`data-align=\"center\"` is not one of `left`, `right`, `centre`. Did you mean `centre`?")]
    [InlineData("<p ¦id=\"a b\"/>", "`id=\"a b\"` is not a name without blanks.")]
    [InlineData("<p id=\"a\"/><hr/>¦<p id=\"a\"/>", "The id `a` stands twice. The other is at t:1:73.")]
    [InlineData("<p ¦class=\"big\">x</p>", "`p` has no class `big`. Known here: `poster`.")]
    [InlineData("<div ¦class=\"colums\"><div/></div>", "`div` needs a class here that says what it is. Did you mean `columns`?")]
    [InlineData("¦<div><p>x</p></div>", "`div` needs a class here that says what it is. Known here: `columns`, `keep`, `space`, `alongside`.")]
    [InlineData("<p>¦<span>x</span></p>", "`span` needs a class here that says what it is. Known here: `large`, `write`, `judged`.")]
    [InlineData("¦<td>x</td>", "`td` cannot stand in `section class=\"sheet\"`. It stands in `tr`.")]
    [InlineData("<p>¦<p>x</p></p>", "`p` cannot stand in `p`. It stands in `section class=\"sheet\"`, `div`, `div class=\"keep\"`, `aside class=\"danger\"`, `aside class=\"warning\"`, `aside class=\"caution\"`, `aside class=\"stop\"`, `aside class=\"concern\"`, `aside class=\"note\"`.")]
    [InlineData("¦<section class=\"sheet\" id=\"b\" title=\"T\" data-for=\"x\" data-readers=\"all\"/>", "`section class=\"sheet\"` cannot stand in `section class=\"sheet\"`. It stands in no other element.")]
    [InlineData("¦loose", "Text cannot stand in `section class=\"sheet\"`: `loose`.")]
    [InlineData("<ul>  ¦a text that is too long to be shown whole</ul>", "Text cannot stand in `ul`: `a text that is too l…`.")]
    [InlineData("¦<p>x", "`p` is not closed. It has to end before `</section>` at t:1:77.")]
    [InlineData("<p>a¦<br>b</p>", "`br` is not closed. Write `<br/>`.")]
    [InlineData("<p>x</p>¦</p>", "`</p>` closes nothing.")]
    [InlineData("<p>¦<strong>x</p>", "`strong` is not closed. It has to end before `</p>` at t:1:85.")]
    [InlineData("<p ¦data-align=left>x</p>", "The value of `data-align` is not in quotes. Write `data-align=\"…\"`.")]
    [InlineData("<p ¦id>x</p>", "`id` has no value. Write `id=\"…\"`.")]
    [InlineData("<p id=\"a\" ¦id=\"b\"/>", "`id` stands here twice.")]
    [InlineData("<p ¦,/>", "`,` cannot stand in a tag.")]
    [InlineData("<p/>¦<p <b", "The tag of `p` is not closed. Write `>` at its end.")]
    [InlineData("<p>x¦</p id=\"a\">", "A closing tag holds a name and no more.")]
    [InlineData("<p>a ¦& b</p>", "An `&` that stands for itself is written `&amp;`.")]
    [InlineData("<p>a¦&nbsp;b</p>", "`&nbsp;` is not known here. Write the letter itself, or `&#160;`.")]
    [InlineData("<p>¦&bogus;</p>", "`&bogus;` is not known here. Write the letter itself.")]
    [InlineData("<p>¦&#xD800;</p>", "`&#xD800;` is not known here. Write the letter itself.")]
    [InlineData("<p>¦&#1114112;</p>", "`&#1114112;` is not known here. Write the letter itself.")]
    [InlineData("<p>1 ¦< 2</p>", "A `<` that stands for itself is written `&lt;`.")]
    [InlineData("¦<!DOCTYPE html>", "Only elements, text and comments can stand here.")]
    [InlineData("¦<![CDATA[x]]>", "Only elements, text and comments can stand here.")]
    [InlineData("¦<?php x ?>", "Only elements, text and comments can stand here.")]
    [InlineData("¦<div class=\"space\"/>", "`div class=\"space\"` needs `data-mm`: its height in mm.")]
    [InlineData("¦<p class=\"poster\">x</p>", "`p class=\"poster\"` needs `data-mm`: height of a capital letter at most, in mm.")]
    [InlineData("<p><data ¦value=\"1,5\">1,5</data></p>", "`value=\"1,5\"` is not a number.")]
    [InlineData("<p><data ¦value=\"NaN\">x</data></p>", "`value=\"NaN\"` is not a number.")]
    [InlineData("<p><data value=\"1\" ¦data-decimals=\"12\">1</data></p>", "`data-decimals=\"12\"` is not a whole number from 0 to 9.")]
    [InlineData("<p><time ¦datetime=\"12.9.2026\">x</time></p>", "`datetime=\"12.9.2026\"` is not `2026-09-12`, `19:30` or `2026-09-12T19:30`.")]
    [InlineData("<p><time ¦datetime=\"25:00\">x</time></p>", "`datetime=\"25:00\"` is not `2026-09-12`, `19:30` or `2026-09-12T19:30`.")]
    [InlineData("<p><meter ¦value=\"-1\"/></p>", "`value=\"-1\"` is not a number, 0 or more.")]
    [InlineData("<p><input ¦type=\"radio\"/></p>", "`type=\"radio\"` is not `checkbox`.")]
    [InlineData("<p><a class=\"page\" ¦href=\"day\"/></p>", "`href=\"day\"` is not `#` and an id.")]
    [InlineData("<p>¦<a href=\"#a\"><a href=\"#b\">x</a></a></p>", "A link cannot stand in a link.")]
    [InlineData("<p>¦<label>x</label></p>", "A `label` holds one box to tick, and then the words.")]
    [InlineData("<p>¦<label>x <input type=\"checkbox\"/></label></p>", "A `label` holds one box to tick, and then the words.")]
    [InlineData("<dl><dt>a</dt>¦<dt>b</dt><dd/></dl>", "A `dt` needs a `dd` before the next.")]
    [InlineData("<dl>¦<dd>a</dd></dl>", "A `dd` needs a `dt` before it.")]
    [InlineData("<dl>¦<dt>a</dt></dl>", "A `dt` needs a `dd` after it.")]
    [InlineData("¦<div class=\"columns\"/>", "Columns need at least one `div` in them.")]
    [InlineData("¦<aside class=\"danger\"><p>a</p></aside>", "`aside class=\"danger\"` holds 2 or 3 `p`: what can happen, what to do, and who decides.")]
    [InlineData("¦<aside class=\"stop\"/>", "`aside class=\"stop\"` holds 1 or 2 `p`: what was found, and its source and cure.")]
    [InlineData("¦<figure data-drawing=\"stage-polt\"/>", "There is no drawing `stage-polt`. Did you mean `stage-plot`?")]
    [InlineData("¦<figure data-drawing=\"stage-plot\" data-atc=\"x\"/>", "The drawing `stage-plot` has no `data-atc`. Did you mean `act`?")]
    [InlineData("¦<figure data-drawing=\"stage-plot\" data-act=\"Nobody\"/>", "The drawing `stage-plot` cannot be made for data-act=\"Nobody\".")]
    [InlineData("¦<table><tbody/></table>", "A `table` needs a `colgroup` with a `col` for each column, and a `thead` with one `tr`.")]
    [InlineData("<table><colgroup><col data-key=\"a\"/>¦<col data-key=\"a\"/></colgroup><thead><tr><th/><th/></tr></thead></table>", "Two columns have the key `a`.")]
    [InlineData("<table><colgroup><col data-key=\"a\"/></colgroup><thead>¦<tr><th/><th/></tr></thead></table>", "There are 1 columns and 2 heads.")]
    [InlineData("<table><colgroup><col data-key=\"a\"/></colgroup><thead><tr>¦<td/></tr></thead></table>", "In a `thead` stands `th`.")]
    [InlineData("<table>" + Head + "<tbody>¦<tr><td/><td/><td/></tr></tbody></table>", "There are 2 columns, and this row takes 3.")]
    [InlineData("<table>" + Head + "<tbody><tr>¦<th/></tr></tbody></table>", "A `th` stands in the `thead`; here stands `td`.")]
    [InlineData("<table>" + Head + "<tbody>¦<tr class=\"sub hold\"><td/></tr></tbody></table>", "A row is `sub` or `hold`, not both.")]
    [InlineData("<table>" + Head + "<tbody>¦<tr class=\"group\"><td/><td/></tr></tbody></table>", "A row `group` is nothing else, and has one field.")]
    [InlineData("<table>" + Head + "<tfoot>¦<tr class=\"group\"><td/></tr></tfoot></table>", "A row at the foot opens no group and is always printed.")]
    [InlineData("<table><caption/>" + Head + "¦<caption/></table>", "A `table` has one `caption`.")]
    [InlineData("<table>" + Head + "<tbody>¦<tr data-top=\"1\"><td/></tr></tbody></table>", "Only the rows of a table alongside a picture stand level with something.")]
    [InlineData("¦<div class=\"alongside\"><table>" + Head + "</table></div>", "A picture alongside needs one `figure`, and then one `table`.")]
    [InlineData("<div class=\"alongside\"><figure data-drawing=\"example\"/><table>" + Head + "<tbody>¦<tr data-top=\"3\" data-bottom=\"2\"><td/></tr></tbody></table></div>", "A row alongside a picture needs `data-top` and below it `data-bottom`.")]
    public void What_the_subset_does_not_know_is_a_fault_at_its_place(string markup, string says)
    {
        var column = Reading.Opens.Length + markup.IndexOf('¦', StringComparison.Ordinal) + 1;
        var faults = Reading.ReadInSheet(markup.Replace("¦", "", StringComparison.Ordinal)).Faults;
        Assert.Equal($"t:1:{column}: {says}", faults[0].ToString());
    }

    [Theory]
    [InlineData("x", "t:1:1: Text cannot stand in a template, outside its sheets: `x`.")]
    [InlineData("<p>x</p>", "t:1:1: `p` cannot stand in a template, outside its sheets. It stands in")]
    public void Markup_outside_sheets_is_a_fault(string markup, string fault) =>
        Assert.Contains(Reading.Read(markup).Faults, found => found.ToString().StartsWith(fault, StringComparison.Ordinal));

    [Fact]
    public void A_sheet_says_what_it_lacks() =>
        Assert.Equal(
            ["title", "data-for", "data-readers"],
            Reading.Read("<section class=\"sheet\" id=\"a\"/>").Faults.Select(fault => fault.Says.Split('`')[3]));

    [Fact]
    public void Reading_goes_on_and_all_faults_come_in_the_order_of_their_places()
    {
        var read = Reading.ReadInSheet("""

            <p data-algin="left">a & b</p>
            <tabel><p>in what is not known, <strong>reading goes on</p></tabel>
            <ul><p>x</p></ul>
            <p>last</p>
            """);
        Assert.Equal(["2:4", "2:24", "3:1", "3:33", "4:5"], read.Faults.Select(fault => $"{fault.At.Line}:{fault.At.Column}"));
        Assert.Equal(4, Assert.Single(read.Sheets).Blocks.Count);
    }

    [Fact]
    public void A_quote_that_is_not_closed_does_not_swallow_the_rest()
    {
        var read = Reading.ReadInSheet("<p id=\"x>a</p><p>b</p><p data-algin=\"left\"/>");
        Assert.Contains(read.Faults, fault => fault.Says.StartsWith("The value of `id` does not end", StringComparison.Ordinal));
        Assert.Contains(read.Faults, fault => fault.Says.Contains("data-algin", StringComparison.Ordinal));
    }

    [Fact]
    public void A_comment_that_is_not_closed_is_a_fault() =>
        Assert.Contains(Reading.ReadInSheet("<p/><!-- x").Faults, fault => fault.Says == "This comment is not closed.");

    [Fact]
    public void Elements_nested_too_deep_are_a_fault_and_no_crash()
    {
        var faults = Reading.ReadInSheet(string.Concat(Enumerable.Repeat("<div class=\"keep\">", 200_000))).Faults;
        Assert.Equal("Elements stand more than 60 deep in each other here; nothing after this was read.", Assert.Single(faults).Says);
    }
}
