using System.Diagnostics;
using Advance.Sheets.Markup;
using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Templating;

public sealed class LimitTests
{
    private static readonly TemplateLimits Tight = new() { Rounds = 1000, Steps = 100_000, Depth = 5, Output = 10_000, Text = 1000 };

    [Theory]
    [InlineData("a\n{{ while true }}{{ end }}", "2:4: The template was stopped: its loops go on after 1000 rounds.")]
    [InlineData("{{ for i in 1..900; for j in 1..900; end; end }}", "1:21: The template was stopped: its loops go on after 1000 rounds.")]
    [InlineData("{{ for i in 1..900; end }}{{ for i in 1..900; end }}", "1:30: The template was stopped: its loops go on after 1000 rounds.")]
    [InlineData("{{ for i in 1..2000000000; end }}", "1:14: Range expression exceeds LoopLimit `1001`.")]
    [InlineData("{{ s = \"x\" }}{{ while true; s = s + s; end }}", "1:33: The template was stopped: a text grew longer than 1000 characters.")]
    [InlineData("{{ \"x\" * 1001 }}", "1:10: String multiplication exceeds LimitToString `1000`.")]
    [InlineData("{{ (1..999) | array.join \"----\" }}", "1:15: The template was stopped: a text grew longer than 1000 characters.")]
    [InlineData("{{ func f(n); f n + 1; end; f 1 }}", "1:15: Exceeding number of recursive depth limit `100` for node: `f n+1`.")]
    [InlineData("{{ for i in 1..900 }}0123456789012345{{ end }}", "1:22: The template was stopped: it writes more than 10000 characters.")]
    [InlineData("{{ for i in 1..900 }}{{ \"0123456789012345\" }}{{ end }}", "1:25: The template was stopped: it writes more than 10000 characters.")]
    public void A_template_that_runs_away_is_stopped_at_its_place(string template, string fault)
    {
        var rendered = Rendering.Render(template, limits: Tight);
        Assert.Equal($"{Rendering.Name}:{fault}", Assert.Single(rendered.Faults).ToString());
        Assert.False(rendered.IsWhole);
    }

    [Fact]
    public void Steps_are_counted_over_all_partials()
    {
        var templates = new Dictionary<string, string>
        {
            [Rendering.Name] = "{{ include \"p\" n: 3 }}",
            ["p"] = "{{ if n > 0 }}" + string.Concat(Enumerable.Repeat("{{ include \"p\" n: (n - 1) }}", 40)) + "{{ end }}",
        };
        var rendered = Rendering.RenderAll(templates, limits: Tight);
        Assert.Equal("The template was stopped: it runs on after 100000 steps.", Assert.Single(rendered.Faults).Says);
    }

    [Fact]
    public void Partials_that_include_each_other_are_stopped()
    {
        var templates = new Dictionary<string, string> { [Rendering.Name] = "{{ include \"a\" }}", ["a"] = "\n{{ include \"b\" }}", ["b"] = "{{ include \"a\" }}" };
        var fault = Assert.Single(Rendering.RenderAll(templates, limits: Tight).Faults);
        Assert.Equal("b:1:4: The template was stopped: its partials include each other more than 5 deep. (included at a:2:4)", fault.ToString());
        Assert.Equal(["a:2:4", "b:1:4", "a:2:4", "sheets/test.html:1:4"], fault.IncludedAt.Select(place => place.ToString()));
    }

    [Fact]
    public void An_endless_loop_ends_soon_with_the_limits_as_they_come()
    {
        var watch = Stopwatch.StartNew();
        Assert.Contains("its loops go on after 1000000 rounds", Rendering.OnlyFault("{{ while true }}{{ end }}"), StringComparison.Ordinal);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), $"It took {watch.Elapsed}.");
    }

    [Fact]
    public void Three_million_characters_come_whole()
    {
        var rendered = Rendering.Render("{{ for i in 1..100000 }}0123456789 {{ name }} 0123456789{{ end }}.", new Named("fifteen letters"));
        Assert.Empty(rendered.Faults);
        Assert.Equal(3_700_001, rendered.Text.Length);
        Assert.EndsWith("fifteen letters 0123456789.", rendered.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void One_value_of_more_than_a_million_characters_is_a_fault_and_is_not_cut() =>
        Assert.Contains("1:4: The template was stopped: a text grew longer than 1000000 characters", Rendering.OnlyFault("{{ name }}", new Named(new string('x', 1_100_000))), StringComparison.Ordinal);

    [Theory]
    [InlineData("(", ")")]
    [InlineData("[", "]")]
    [InlineData("!", "")]
    [InlineData("1 + ", "")]
    public void Deep_expressions_are_a_fault_and_no_crash(string open, string close)
    {
        var template = "{{ " + string.Concat(Enumerable.Repeat(open, 20_000)) + "1" + string.Concat(Enumerable.Repeat(close, 20_000)) + " }}";
        Assert.NotEmpty(Rendering.Render(template).Faults);
    }

    [Fact]
    public void Deep_statements_are_a_fault_and_no_crash() =>
        Assert.NotEmpty(Rendering.Render(string.Concat(Enumerable.Repeat("{{ if true }}", 20_000))).Faults);

    [Fact]
    public void What_was_stopped_is_not_read_as_a_sheet()
    {
        var read = SheetReader.Read(Rendering.Render("<section>{{ while true; end }}", limits: Tight), []);
        Assert.Empty(read.Sheets);
        Assert.Contains("stopped", Assert.Single(read.Faults).Says, StringComparison.Ordinal);
    }

    private sealed record Named(string Name);
}
