using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Templating;

public sealed class SnakeCaseTests
{
    [Theory]
    [InlineData("Channel", "channel")]
    [InlineData("MicOrDi", "mic_or_di")]
    [InlineData("PDUnits", "pd_units")]
    [InlineData("TrimKN", "trim_kn")]
    [InlineData("Act1Source", "act1_source")]
    [InlineData("A", "a")]
    public void Names_of_code_become_names_of_templates(string code, string template) => Assert.Equal(template, SnakeCase.Of(code));

    [Fact]
    public void A_member_may_have_a_name_that_is_a_word_of_the_language() =>
        Assert.Equal("abc", Rendering.Text("{{ mix.for }}{{ mix.with }}{{ mix.end }}", new View(new("a", "b", "c"))));

    [Fact]
    public void Words_of_an_enumeration_have_hyphens() => Assert.Equal("tape-up", SnakeCase.Of("TapeUp", '-'));

    private sealed record View(Mix Mix);

    private sealed record Mix(string For, string With, string End);
}
