namespace Advance.Tests.Sheets.Templating;

public sealed class EscapingTests
{
    [Theory]
    [InlineData("<b>", "&lt;b&gt;")]
    [InlineData("\" onload='x'", "&quot; onload=&#39;x&#39;")]
    [InlineData("&amp;", "&amp;amp;")]
    [InlineData("{{ name }}", "{{ name }}")]
    [InlineData("-->", "--&gt;")]
    [InlineData(" a  b\t\r\n", "&#32;a &#32;b&#9;&#13;&#10;")]
    [InlineData("\u202Ea\u202C \u00A0", "\u202Ea\u202C \u00A0")]
    public void A_value_is_text_wherever_it_is_printed(string name, string escaped)
    {
        Assert.Equal(escaped, Rendering.Text("{{ name }}", new Named(name)));
        Assert.Equal($"<p id=\"{escaped}\"/>", Rendering.Text("<p id=\"{{ name }}\"/>", new Named(name)));
    }

    [Fact]
    public void What_a_template_makes_of_a_value_is_escaped_as_well() =>
        Assert.Equal("&lt;b&gt; &lt;B&gt; &lt;b&gt;", Rendering.Text("{{ x = name }}{{ x }} {{ string.upcase name }} {{ $\"{name}\" }}", new Named("<b>")));

    [Fact]
    public void Markup_in_a_function_of_the_template_is_its_own() =>
        Assert.Equal("<b>&lt;i&gt;</b>", Rendering.Text("{{ func bold(x) }}<b>{{ x }}</b>{{ end }}{{ bold name }}", new Named("<i>")));

    [Fact]
    public void Line_ends_can_be_kept_and_the_lines_are_escaped() =>
        Assert.Equal("a &lt;b&gt;<br/>c", Rendering.Text("{{ name | lines }}", new Named("a <b>\r\nc")));

    private sealed record Named(string Name);
}
