using Advance.Sheets.Views;

namespace Advance.Tests.Sheets.Templating;

public sealed class ConditionTests
{
    private static readonly View Shown = new(null, "", "x", Cell.Blank, Cell.Blank with { Tbc = "" }, [], ["a"], 0, IsYes: true, IsNo: false);

    [Theory]
    [InlineData("nothing", false)]
    [InlineData("empty_text", false)]
    [InlineData("text", true)]
    [InlineData("blank_cell", false)]
    [InlineData("open_cell", true)]
    [InlineData("empty_list", false)]
    [InlineData("list", true)]
    [InlineData("zero", true)]
    [InlineData("is_yes", true)]
    [InlineData("is_no", false)]
    public void What_would_print_nothing_is_false(string member, bool isTrue) =>
        Assert.Equal(isTrue ? "yes" : "no", Rendering.Text($"{{{{ if {member} }}}}yes{{{{ else }}}}no{{{{ end }}}}", Shown));

    private sealed record View(
        string? Nothing,
        string EmptyText,
        string Text,
        Cell BlankCell,
        Cell OpenCell,
        IReadOnlyList<string> EmptyList,
        IReadOnlyList<string> List,
        int Zero,
        bool IsYes,
        bool IsNo);
}
