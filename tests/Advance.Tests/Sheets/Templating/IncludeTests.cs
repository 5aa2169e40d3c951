namespace Advance.Tests.Sheets.Templating;

public sealed class IncludeTests
{
    [Fact]
    public void What_a_partial_prints_is_escaped_once() =>
        Assert.Equal("[&lt;b&gt; &amp; <i/>]", Text("[{{ include \"p\" x: name }}]", "{{ x }} &amp; <i/>"));

    [Fact]
    public void It_is_escaped_once_through_any_number_of_partials() =>
        Assert.Equal("&lt;b&gt;", Text("{{ include \"p\" n: 5 }}", "{{ if n > 0; include \"p\" n: (n - 1); else; name; end }}"));

    [Fact]
    public void A_partial_sees_the_view() => Assert.Equal("&lt;b&gt;", Text("{{ include \"p\" }}", "{{ name }}"));

    [Fact]
    public void A_partial_does_not_see_what_its_caller_named()
    {
        var faults = Faults("{{ for row in [1]; own = 2; include \"p\"; end }}", "{{ row }}{{ own }}");
        Assert.Equal(
            [
                "p:1:4: There is no `row` here. Known here: `name`, `given`, `include`, `lines`, `string`, `array`, `math`. (included at sheets/test.html:1:29)",
                "p:1:13: There is no `own` here. Known here: `name`, `given`, `include`, `lines`, `string`, `array`, `math`. (included at sheets/test.html:1:29)",
            ],
            faults);
    }

    [Fact]
    public void A_partial_leaves_nothing_behind()
    {
        Assert.Equal(["sheets/test.html:1:21: There is no `own` here. Known here: `name`, `given`, `include`, `lines`, `string`, `array`, `math`."], Faults("{{ include \"p\" }}{{ own }}", "{{ own = 1 }}"));
        Assert.Equal("1&lt;b&gt;", Text("{{ include \"p\" x: 1 }}{{ include \"p\" x: name }}", "{{ x }}"));
    }

    [Fact]
    public void A_parameter_may_be_left_out_where_it_is_asked_for_as_given()
    {
        Assert.Equal("no", Text("{{ include \"p\" }}", "{{ given.note ?? \"no\" }}"));
        Assert.Equal("yes", Text("{{ include \"p\" note: \"yes\" }}", "{{ given.note ?? \"no\" }}"));
    }

    [Theory]
    [InlineData("{{ x = include \"p\" }}", "cannot be used within an expression")]
    [InlineData("{{ include \"p\" | string.upcase }}", "cannot be used within an expression")]
    [InlineData("{{ include \"p\" 1 }}", "has a name")]
    [InlineData("{{ include }}", "expecting `1` arguments")]
    [InlineData("{{ func f; ret 1; end; include \"p\" f: @f }}", "cannot be given a function")]
    public void It_stands_alone_and_takes_names(string template, string says) => Assert.Contains(says, Assert.Single(Faults(template, "x")), StringComparison.Ordinal);

    [Fact]
    public void A_name_that_is_not_there_is_found_also_where_the_template_does_not_come_to() =>
        Assert.Equal(
            ["sheets/test.html:2:20: There is no template `partials/tbx.html`. Did you mean `partials/tbc.html`?"],
            Faults("{{ if false }}\ninclude {{ include \"partials/tbx.html\" }}{{ end }}", ""));

    [Fact]
    public void A_name_that_is_made_while_it_runs_is_a_fault_and_the_rest_is_still_looked_at()
    {
        var rendered = Rendering.Render("{{ include (\"a\" + \"b\") }}{{ nmae }}", new Named("x"));
        Assert.Equal(2, rendered.Faults.Count);
        Assert.False(rendered.IsWhole);
    }

    [Fact]
    public void A_partial_that_cannot_be_read_is_a_fault_of_the_partial()
    {
        var fault = Assert.Single(Faults("{{ include \"p\" }}{{ include \"p\" }}", "\n  {{ if name }}"));
        Assert.StartsWith("p:2:", fault, StringComparison.Ordinal);
    }

    private static string Text(string template, string partial)
    {
        var rendered = Rendering.RenderAll(new() { [Rendering.Name] = template, ["p"] = partial }, new Named("<b>"));
        Assert.Empty(rendered.Faults);
        return rendered.Text;
    }

    private static IEnumerable<string> Faults(string template, string partial) =>
        Rendering.RenderAll(new() { [Rendering.Name] = template, ["p"] = partial }, new Named("<b>")).Faults.Select(fault => fault.ToString());

    private sealed record Named(string Name);
}
