using Advance.Paper.Tree;
using Advance.Tests.Sheets.Templating;
using CsCheck;
using Cell = Advance.Sheets.Views.Cell;

namespace Advance.Tests.Sheets.Markup;

public sealed class TemplateToTreeTests
{
    private const string Sheet = "<section class=\"sheet\" id=\"s\" title=\"{{ name }}\" data-for=\"x\" data-readers=\"all\">{{ BODY }}</section>";

    public static TheoryData<string> HostileNames { get; } =
    [
        "<script>alert(1)</script>", "</p></section>", "\"/><b x=\"", "' onclick='x", "&amp; &lt; &#0; &", "]]>", "--> <!-- x", "{{ name }}", "{%{ }}",
        " two  blanks ", "tab\tand\r\nline\nends", "\u202Egnirts\u202C", "\u2066x\u2069\u200B\uFEFF", "e\u0301 \u00A0 ﷽ 🎸", "\0\u0001\u007F", "\uD800 alone", "=1+1", "",
        new string('W', 500),
    ];

    [Theory]
    [MemberData(nameof(HostileNames))]
    public void A_hostile_name_reaches_the_tree_letter_by_letter(string name) => AssertKept(name);

    [Fact]
    public void So_does_any_text() =>
        Gen.Frequency((5, Gen.Char["<>&\"' \t\r\n{}%/=-!?#;\u202E\u00A0\uD83D\uDE00ab0"]), (1, Gen.Char)).Array[0, 30]
            .Select(letters => new string(letters))
            .Sample(AssertKept, iter: 500);

    [Fact]
    public void A_printed_cell_becomes_its_piece_of_the_tree()
    {
        var row = Assert.Single(ReadView("{{ cell }}", new View("x", Cell.Number(26.5, "26.5", "A") with { Strong = true, Tbc = "venue", Verdict = Verdict.Fails })).Groups[0].Rows);
        Inline[] pieces = [new Datum("26.5", new NumberValue(26.5, "A"), TextStyle.Strong), new Text(" "), new Tag("TBC venue")];
        Assert.Equal(TreeText.Of(pieces), TreeText.Of(row.Cells[0].Text));
        Assert.Equal(Verdict.Fails, row.Cells[0].Verdict);
    }

    [Fact]
    public void A_cell_in_an_attribute_is_a_fault_at_the_place_that_prints_it()
    {
        var rendered = Rendering.Render(Sheet.Replace("{{ BODY }}", "\n<p id=\"{{ cell }}\">x</p>", StringComparison.Ordinal), new View("x", Cell.Number(1)));
        Assert.Equal("sheets/test.html:2:4: The value of `id` does not end, or has markup in it. Close its quotes; of a cell take `.text`.", Reading.Read(rendered).Faults[0].ToString());
    }

    [Fact]
    public void A_fault_in_a_partial_names_the_partial_and_who_included_it()
    {
        var templates = new Dictionary<string, string>
        {
            [Rendering.Name] = Sheet.Replace("{{ BODY }}", "\n{{ for i in 1..3 }}{{ include \"partials/row.html\" }}{{ end }}", StringComparison.Ordinal),
            ["partials/row.html"] = "<p>\n  <tabel/></p>",
        };
        var fault = Assert.Single(Reading.Read(Rendering.RenderAll(templates, new View("x", Cell.Blank))).Faults);
        Assert.Equal("partials/row.html:2:3: There is no element `tabel`. Did you mean `table`? (included at sheets/test.html:2:23)", fault.ToString());
    }

    [Fact]
    public void Faults_of_the_template_and_of_its_markup_come_in_one_run()
    {
        var rendered = Rendering.Render(Sheet.Replace("{{ BODY }}", "<p>{{ nmae }}</p><tabel/>", StringComparison.Ordinal), new View("x", Cell.Blank));
        Assert.Equal(["There is no `nmae` here.", "There is no element `tabel`."], Reading.Read(rendered).Faults.Select(fault => fault.Says));
    }

    private static void AssertKept(string name)
    {
        var rendered = Rendering.Render(
            Sheet.Replace("{{ BODY }}", "<p class=\"poster\" data-mm=\"9\">{{ name }}</p><p>\n  <a href=\"#{{ name }}\">{{ name }}</a>\n</p><p>{{ cell }}</p>", StringComparison.Ordinal),
            new View(name + ".", Cell.Of(name + ".")));
        Assert.Empty(rendered.Faults);
        var read = Reading.Read(rendered);
        Assert.Empty(read.Faults);
        var sheet = Assert.Single(read.Sheets);
        var link = Assert.IsType<Link>(Assert.Single(((Paragraph)sheet.Blocks[1]).Text));
        var texts = new[] { sheet.Title, ((Poster)sheet.Blocks[0]).Text, link.Target[1..], ((Text)link.Text[0]).Value, ((Text)((Paragraph)sheet.Blocks[2]).Text[0]).Value };
        Assert.All(texts, text => Assert.Equal(name + ".", text));
    }

    private static Table ReadView(string field, View view)
    {
        const string Table = "<table><colgroup><col data-key=\"a\"/></colgroup><thead><tr><th/></tr></thead><tbody><tr><td>\n FIELD \n</td></tr></tbody></table>";
        var rendered = Rendering.Render(Sheet.Replace("{{ BODY }}", Table.Replace("FIELD", field, StringComparison.Ordinal), StringComparison.Ordinal), view);
        var read = Reading.Read(rendered);
        Assert.Empty(read.Faults);
        return Assert.IsType<Table>(Assert.Single(Assert.Single(read.Sheets).Blocks));
    }

    private sealed record View(string Name, Cell Cell);
}
