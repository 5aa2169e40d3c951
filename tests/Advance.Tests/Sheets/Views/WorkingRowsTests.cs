using Advance.Sheets.Views;

namespace Advance.Tests.Sheets.Views;

public sealed class WorkingRowsTests
{
    [Fact]
    public void Figures_that_come_out_alike_of_the_same_are_one_row()
    {
        var rows = WorkingRows.Folded([Line("T1-1", "R = 2 kg", "3 kg"), Line("T1-2", "R = 4 kg", "5 kg"), Line("T1-3", "R = 2 kg", "3 kg")]);

        Assert.Equal(["T1-1, T1-3", "T1-2"], rows.Select(row => row.Of.Text));
    }

    [Fact]
    public void So_are_edges_of_the_same_things()
    {
        var rows = WorkingRows.Folded([Line("SL", "m = 2 kg", "3", "front edge"), Line("SL", "m = 2 kg", "3", "rear edge"), Line("SR", "m = 2 kg", "3", "front edge"), Line("SR", "m = 2 kg", "3", "rear edge")]);

        var row = Assert.Single(rows);
        Assert.Equal(("SL, SR", "front edge; rear edge"), (row.Of.Text, row.Remark.Text));
    }

    [Fact]
    public void Not_where_other_values_only_happen_to_give_the_same() =>
        Assert.Equal(2, WorkingRows.Folded([Line("T1-1", "R = 2 kg", "3 kg"), Line("T1-2", "R = 4 kg", "3 kg")]).Count);

    [Fact]
    public void What_is_open_keeps_a_row_of_its_own_as_it_may_come_out_otherwise()
    {
        var open = Line("T1-1", "R = 2 kg", "3 kg");
        open = open with { Result = open.Result with { Tbc = "" } };

        Assert.Equal(2, WorkingRows.Folded([open, open with { Address = new Cell("b") }]).Count);
    }

    [Fact]
    public void What_is_put_in_alike_in_each_row_is_said_above_them()
    {
        List<WorkingsView.Line> rows = [Line("T1", "φ = 1.25; m = 2 kg", "3 kg"), Line("T2", "φ = 1.25; m = 4 kg", "5 kg")];
        var alike = WorkingRows.InEach(rows);

        Assert.Equal(["φ = 1.25"], alike.Select(put => put.Said.Text));
        Assert.Equal(["m = 2 kg", "m = 4 kg"], WorkingRows.Without(alike, rows).Select(row => Assert.Single(row.Inputs).Said.Text));
        Assert.Empty(WorkingRows.InEach([rows[0]]));
    }

    [Fact]
    public void What_is_behind_a_value_is_said_where_it_is_first_put_in()
    {
        var hoist = new WorkingsView.Put(new Cell("m = 46 kg"), new Cell("(hoist 45 kg; sling 1 kg)"));
        var rows = WorkingRows.Without([], [Line("T1-1", "R = 2 kg", "48 kg", behind: hoist), Line("T1-2", "R = 4 kg", "50 kg", behind: hoist)]);

        Assert.Equal([false, true], rows.Select(row => row.Inputs[^1].Behind.IsBlank));
    }

    [Theory]
    [InlineData(true, "T1/pick/1", "T1-1")]
    [InlineData(true, "PD1/2", "PD1 outlet 2")]
    [InlineData(true, "Subs SL/whole/front edge", "Subs SL front edge")]
    [InlineData(true, "A2", "BR1 leg to A2")]
    [InlineData(false, "T1/pick/1/shackle", "shackle of T1-1")]
    [InlineData(false, "T1/pick/1", "T1-12")]
    public void An_address_is_not_repeated_where_the_name_tells_it(bool isTold, string own, string row) => Assert.Equal(isTold, WorkingRows.IsTold(own, row));

    [Fact]
    public void Tables_that_are_the_same_row_by_row_stand_once_under_both_headings()
    {
        WorkingsView.Group Group(string kind, string put, string address = "a") =>
            new(new Cell(kind), new Cell("F = R + m"), new Cell("m gear"), new Cell("arithmetic"), [Line("T1-1", put, "3 kg") with { Address = new Cell(address) }]) { SharedAddress = new Cell(kind) };

        var groups = WorkingRows.Merged([Group("On its hoist", "R = 2 kg"), Group("Carries", "R = 1 kg"), Group("On its point", "R = 2 kg")]).ToList();

        Assert.Equal(["On its hoist; on its point", "Carries"], groups.Select(group => group.Kind.Text));
        Assert.Equal("On its hoist, On its point", groups[0].SharedAddress.Text);
        Assert.Equal(2, WorkingRows.Merged([Group("A", "R = 2 kg") with { SharedAddress = Cell.Blank }, Group("B", "R = 2 kg", "b") with { SharedAddress = Cell.Blank }]).Count());
    }

    private static WorkingsView.Line Line(string name, string inputs, string result, string remark = "", WorkingsView.Put? behind = null) =>
        new(new Cell(name + remark), new Cell(name), new Cell(remark), [.. inputs.Split("; ").Select(put => new WorkingsView.Put(new Cell(put), Cell.Blank)), .. behind is null ? [] : new[] { behind }], new Cell(result));
}
