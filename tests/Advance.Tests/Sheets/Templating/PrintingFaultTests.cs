namespace Advance.Tests.Sheets.Templating;

public sealed class PrintingFaultTests
{
    private static readonly View Shown = new([new("Kick")], IsOpen: true);

    [Theory]
    [InlineData("{{ rows }}", "1:4: A list cannot be printed; loop over it.")]
    [InlineData("a {{ rows[0] }}", "1:6: This cannot be printed, only its members can: source.")]
    [InlineData("{{ is_open }}", "1:4: A yes or no cannot be printed; write the words in an `if`.")]
    [InlineData("{{ {a: 1} }}", "1:4: This cannot be printed, only its members can.")]
    [InlineData("{{ 1 / 0 }}", "1:4: This is no finite number, so it cannot be printed.")]
    [InlineData("{{ rows[0].source = \"x\" }}", "1:12: Cannot set a value for the readonly member: rows[0].source.")]
    [InlineData("{{ rows[0] = 1 }}", "1:9: A template cannot change what it prints.")]
    [InlineData("{{ rows[3] }}", "1:9: The index 3 is out of bounds [0, 1] on the `rows` with the indexer: 3.")]
    [InlineData("{{ for x in is_open; end }}", "1:13: Unexpected type `System.Boolean` for iterator.")]
    [InlineData("{{ math.round \"x\" 1 }}", "1:4: This is not a number.")]
    [InlineData("{{ array.first \"x\" }}", "1:4: This is a text and not a list.")]
    [InlineData("{{ capture x }}<b/>{{ end }}", "1:4: A template cannot capture, wrap or make table rows by statement: the place of what is written would be lost. Write a partial and include it.")]
    public void What_cannot_be_printed_is_a_fault_at_its_place(string template, string fault) =>
        Assert.Equal($"{Rendering.Name}:{fault}", Rendering.OnlyFault(template, Shown));

    [Fact]
    public void All_faults_in_how_a_template_is_written_come_at_once()
    {
        var rendered = Rendering.Render("{{ 1 + }}\n{{ 2 * }}\n{{ capture x }}{{ end }}");
        Assert.True(rendered.Faults.Count >= 2);
        Assert.Equal([1, 2], rendered.Faults.Select(fault => fault.At.Line).Distinct());
    }

    private sealed record View(IReadOnlyList<Line> Rows, bool IsOpen);

    private sealed record Line(string Source);
}
