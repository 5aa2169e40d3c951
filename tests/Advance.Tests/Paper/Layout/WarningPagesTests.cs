using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Layout;

/// <summary>Warnings are read with what they warn of: none stands on a page without it.</summary>
public sealed class WarningPagesTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Warnings_take_rows_along_to_their_page(bool inColumns)
    {
        // From a page that is full of rows to one that the warning still fits on.
        for (var rows = 20; rows < 60; rows++)
        {
            Assert.Contains(Laid(rows, inColumns)[^1], name => name.StartsWith('r'));
        }
    }

    [Fact]
    public void Where_there_is_nothing_else_they_stand_alone() =>
        Assert.Equal("page 1: CAUTION", new Laid(Doc(OneSheet(Warning()))).Sketch());

    private static List<List<string>> Laid(int rows, bool inColumns)
    {
        Block warning = inColumns ? new Columns([new ColumnsPart(1, [Warning()]), new ColumnsPart(1, [Warning()])]) : Warning();
        var table = new Table([Col("head")], [new RowGroup([.. Enumerable.Range(1, rows).Select(i => R($"r{i}"))])]);
        return [.. new Laid(Doc(OneSheet(table, warning, new Paragraph(T("Signed"))))).Sketch().Split('\n').Select(page => page.Split(": ")[1].Split(", ").ToList())];
    }

    private static Caution Warning() => new(Signal.Caution, T(string.Concat(Enumerable.Repeat("It can fall. ", 150))), T("Hold it."), T("The crew chief decides."));
}
