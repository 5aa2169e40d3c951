namespace Advance.Tests.Sheets.Templating;

public sealed class UnknownNameTests
{
    private static readonly View Shown = new("Supper", [new("Kick", null)]);

    [Theory]
    [InlineData("{{ titel }}", "1:4: There is no `titel` here. Did you mean `title`?")]
    [InlineData("a\n b {{ rows[0].sorce }}", "2:15: There is no `sorce` here. Did you mean `source`?")]
    [InlineData("{{ rows.sise }}", "1:9: There is no `sise` here. Did you mean `size`?")]
    [InlineData("{{ title | string.upcas }}", "1:19: There is no `upcas` here. Did you mean `upcase`?")]
    [InlineData("{{ rows[0].date }}", "1:12: There is no `date` here. Known here: `source`, `note`.")]
    [InlineData("{{ rows[0].zzz }}", "1:12: There is no `zzz` here. Known here: `source`, `note`.")]
    [InlineData("{{ for row in rwos }}{{ row.source }}{{ end }}", "1:15: There is no `rwos` here. Did you mean `rows`?")]
    [InlineData("{{ if titel == \"x\" && titel.size > 3 }}{{ end }}", "1:7: There is no `titel` here. Did you mean `title`?")]
    public void A_name_that_is_not_known_is_a_fault_with_the_nearest_one(string template, string fault) =>
        Assert.Contains($"{Rendering.Name}:{fault}", Rendering.Render(template, Shown).Faults.Select(found => found.ToString()));

    [Fact]
    public void All_of_them_are_found_in_one_run_and_each_place_once()
    {
        var rendered = Rendering.Render("{{ for i in 1..9 }}{{ titel }}{{ rows[0].sauce.x.y }}{{ end }}{{ nope 1 2 }}{{ nope + 1 }}end", Shown);
        Assert.Equal([23, 42, 66, 80], rendered.Faults.Select(fault => fault.At.Column));
        Assert.EndsWith("end", rendered.Text, StringComparison.Ordinal);
        Assert.True(rendered.IsWhole);
    }

    [Theory]
    [InlineData("date.now")]
    [InlineData("date.parse \"2026-09-12\"")]
    [InlineData("timespan.from_days 1")]
    [InlineData("math.random 1 6")]
    [InlineData("math.uuid")]
    [InlineData("object.eval \"1 + 1\"")]
    [InlineData("object.eval_template \"x\"")]
    [InlineData("\"1 + 1\" | object.eval")]
    [InlineData("regex.match \"aaaa\" \"(a+)+b\"")]
    [InlineData("html.escape \"x\"")]
    [InlineData("string.replace_first \"a\" \"b\" \"c\"")]
    [InlineData("string.pad_left \"a\" 9999999")]
    [InlineData("array.add [1] 2")]
    [InlineData("include_join [\"a\"] \",\"")]
    [InlineData("file.read \"/etc/passwd\"")]
    public void What_reaches_the_clock_chance_code_or_files_is_not_there(string expression)
    {
        var rendered = Rendering.Render("[{{ " + expression + " }}]", Shown);
        Assert.Equal("[]", rendered.Text);
        Assert.StartsWith("There is no `", Assert.Single(rendered.Faults).Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("date", "A template has no clock: dates come from the gig.")]
    [InlineData("math.random", "Nothing is left to chance: the same gig prints the same sheets.")]
    public void And_the_fault_says_why(string name, string why) => Assert.Equal(why, Assert.Single(Rendering.Render("{{ " + name + " }}", Shown).Faults).Cure);

    [Fact]
    public void What_may_be_missing_is_asked_for_with_care()
    {
        Assert.Equal("", Rendering.Text("{{ rows[0].note }}{{ rows[0].note?.size }}", Shown));
        Assert.Contains("is null", Rendering.OnlyFault("{{ rows[0].note.size }}", Shown), StringComparison.Ordinal);
    }

    private sealed record View(string Title, IReadOnlyList<Line> Rows);

    private sealed record Line(string Source, string? Note);
}
