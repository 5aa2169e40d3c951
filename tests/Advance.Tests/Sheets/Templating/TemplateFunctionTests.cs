using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Templating;

public sealed class TemplateFunctionTests
{
    public static TheoryData<string> Names { get; } = [.. TemplateFunctions.All.Select(function => function.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Its_example_prints_what_the_guide_says(string name)
    {
        var function = Assert.Single(TemplateFunctions.All, function => function.Name == name);
        Assert.Contains(name, function.Example, StringComparison.Ordinal);
        Assert.Equal(function.Prints, Rendering.Text("{{ " + function.Example + " }}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_stands_in_the_guide(string name) => Assert.Contains($"| `{name}` |", TemplateGuide.Write(), StringComparison.Ordinal);

    [Fact]
    public void Halves_go_away_from_zero() =>
        Assert.Equal("0.3 -0.3 3", Rendering.Text("{{ math.round 0.25 1 }} {{ math.round (0 - 0.25) 1 }} {{ math.round 2.5 0 }}"));

    [Fact]
    public void Lists_of_views_can_be_cut() =>
        Assert.Equal("2 b, c", Rendering.Text("{{ x = all | array.offset 1 }}{{ array.size x }} {{ x | array.join \", \" }}", new Lists(["a", "b", "c"])));

    [Fact]
    public void An_empty_list_has_no_first() => Assert.Equal("none", Rendering.Text("{{ (array.first []) ?? \"none\" }}"));

    private sealed record Lists(IReadOnlyList<string> All);
}
