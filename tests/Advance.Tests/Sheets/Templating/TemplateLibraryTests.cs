using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Templating;

public sealed class TemplateLibraryTests
{
    private static readonly TemplateLibrary Shipped = TemplateLibrary.In(typeof(TemplateLibraryTests).Assembly);

    [Fact]
    public void Templates_are_found_in_the_assembly_by_their_path()
    {
        Assert.Equal(["partials/example.html", "partials/tbc.html", "sheets/letter.html"], Shipped.Names);
        Assert.Equal("<p>{{ words }}</p>\n", Shipped.Find("partials/example.html"));
        Assert.Null(Shipped.Find("partials/none.html"));
    }

    [Fact]
    public void All_that_is_shipped_can_be_read()
    {
        var engine = new TemplateEngine(TemplateLibrary.Shipped);
        Assert.Contains("sheets/day-sheet.html", TemplateLibrary.Shipped.Names);
        Assert.Empty(TemplateLibrary.Shipped.Names.Where(name => name.EndsWith(".html", StringComparison.Ordinal)).SelectMany(name => engine.Find(name)!.Faults));
    }

    [Fact]
    public void Overriding_one_partial_changes_that_and_nothing_else()
    {
        var own = Shipped.With(new Dictionary<string, string> { ["partials/tbc.html"] = "<mark>open: {{ who }}</mark>" });
        var before = new TemplateEngine(Shipped).Render("sheets/letter.html", new Named("A & B"));
        var after = new TemplateEngine(own).Render("sheets/letter.html", new Named("A & B"));
        Assert.Empty(after.Faults);
        Assert.Contains("<mark class=\"tbc\">TBC band</mark>", before.Text, StringComparison.Ordinal);
        Assert.Equal(before.Text.Replace("<mark class=\"tbc\">TBC band</mark>", "<mark>open: band</mark>", StringComparison.Ordinal), after.Text);
        Assert.Equal(Shipped.Names, own.Names);
        Assert.Empty(own.Added);
        Assert.All(Shipped.Names.Where(name => name != "partials/tbc.html"), name => Assert.Equal(Shipped.Find(name), own.Find(name)));
    }

    [Fact]
    public void A_file_of_a_name_that_replaces_nothing_is_told()
    {
        var own = Shipped.With(new Dictionary<string, string> { ["partials/tcb.html"] = "", ["partials/tbc.html"] = "" });
        Assert.Equal(["partials/tcb.html"], own.Added);
        Assert.Contains("partials/tcb.html", own.Names);
    }

    [Fact]
    public void Only_templates_that_are_used_are_read()
    {
        var own = Shipped.With(new Dictionary<string, string> { ["partials/broken.html"] = "{{ if" });
        Assert.Empty(new TemplateEngine(own).Render("sheets/letter.html", new Named("A")).Faults);
    }

    [Fact]
    public void A_sheet_that_is_not_there_is_a_fault()
    {
        var rendered = new TemplateEngine(Shipped).Render("sheets/leter.html", new Named("A"));
        Assert.Equal("sheets/leter.html:1:1: There is no template `sheets/leter.html`. Did you mean `sheets/letter.html`?", Assert.Single(rendered.Faults).ToString());
        Assert.False(rendered.IsWhole);
    }

    [Fact]
    public void One_engine_prints_one_view_after_the_other_and_keeps_nothing_of_the_first()
    {
        var engine = new TemplateEngine(Shipped.With(new Dictionary<string, string> { ["t"] = "{{ x = name }}{{ x }}" }));
        Assert.Equal("one", engine.Render("t", new Named("one")).Text);
        Assert.Equal("two", engine.Render("t", new Named("two")).Text);
        Assert.Contains("no `name`", Assert.Single(engine.Render("t", new Other("x")).Faults).Says, StringComparison.Ordinal);
    }

    private sealed record Named(string Name);

    private sealed record Other(string Title);
}
