using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Templating;

public sealed class SourceMapTests
{
    [Theory]
    [InlineData("b", "sheets/test.html:2:1")]
    [InlineData("P1", "sheets/test.html:3:7")]
    [InlineData("<i/>", "partial:2:3")]
    [InlineData("q", "partial:2:12")]
    [InlineData("after", "sheets/test.html:4:24")]
    [InlineData("-2-", "sheets/test.html:5:20")]
    [InlineData("2", "sheets/test.html:5:24")]
    public void Each_letter_leads_back_to_the_template_that_wrote_it(string written, string place)
    {
        var templates = new Dictionary<string, string>
        {
            [Rendering.Name] = "a\nb\n{{    name }}\n{{ include \"partial\" }}after\n{{ for i in 1..2 }}-{{ i }}-{{ end }}",
            ["partial"] = "\n  <i/>{{-  \"q\"  -}}   ",
        };
        var rendered = Rendering.RenderAll(templates, new Named("P1"));
        Assert.Equal(place, rendered.Map.At(rendered.Text.LastIndexOf(written, StringComparison.Ordinal)).ToString());
    }

    [Fact]
    public void Every_letter_that_a_template_wrote_itself_stands_at_the_place_it_is_said_to_come_from()
    {
        const string Template = "<p>\n{{ for i in 1..3 ~}}\n  <b>{{ i }}</b>{{- if i == 2 }} two {{ end -}}\n{{ end }}\n</p>{{ func f }}[f]{{ end }}{{ f }}{{ f }}";
        var rendered = Rendering.Render(Template);
        var lines = Template.Split('\n');
        for (var i = 0; i < rendered.Text.Length; i++)
        {
            var at = rendered.Map.At(i);
            var source = at.Column <= lines[at.Line - 1].Length ? lines[at.Line - 1][at.Column - 1] : '\n';
            Assert.True(source == rendered.Text[i] || source == 'i', $"{i}: `{rendered.Text[i]}` is said to come from `{source}` at {at}.");
        }
    }

    [Fact]
    public void A_place_outside_is_taken_as_the_nearest_end()
    {
        var rendered = RenderedTemplate.Of("t", "ab\nc");
        Assert.Equal("t:1:1", rendered.Map.At(-5).ToString());
        Assert.Equal("t:2:2", rendered.Map.At(99).ToString());
    }

    private sealed record Named(string Name);
}
