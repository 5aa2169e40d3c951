using Advance.Domain.Stocks;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets.Views;

namespace Advance.Tests.Sheets.Views;

/// <summary>What the crew and the shop work from leaves nothing out and names nothing twice.</summary>
public sealed class CrewAndShopTests
{
    private static readonly Lazy<Plan> Planned = new(() =>
        Planner.Plan(BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!));

    private static Plan Supper => Planned.Value;

    [Fact]
    public void Each_kind_that_is_pulled_stands_on_the_pull_list_once_and_a_vehicle_does_not()
    {
        var view = PullListViews.Of(Supper)!;
        var listed = view.Departments.SelectMany(department => department.Lines).Select(line => line.Id.Text).ToList();
        var loose = Supper.Stock.Lines.Where(line => line.Kind?.Role is not (Role.Case or Role.Truck)).Select(line => line.Item).ToList();
        Assert.Equal(loose.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
        Assert.Equal(Supper.Stock.Lines.Count(line => line.Kind?.Role == Role.Case), view.Cases.Count);
    }

    [Fact]
    public void The_truck_sheet_holds_every_case_and_loose_piece()
    {
        var rows = TruckSheetViews.Of(Supper)!.Groups.SelectMany(group => group.Rows).ToList();
        Assert.Equal(Supper.Load.Units.Value, rows.Sum(row => int.Parse(row.Count.Text, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal("1", rows[0].Place.Text.Split('–')[0]);
        Assert.Equal(Supper.Load.InOrder.Count, int.Parse(rows[^1].Place.Text.Split('–')[^1], System.Globalization.CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Out_goes_the_power_first_and_the_deck_after_what_stands_on_it()
    {
        var tasks = LoadOutViews.Of(Supper)!.Front.Tasks.ToList();
        Assert.True(tasks[0].IsHold);
        Assert.DoesNotContain(tasks.Skip(1), task => task.IsHold);
        Assert.Equal("Carry out and load", tasks[^1].Task.Text);
        Assert.True(tasks.FindIndex(task => task.Task.Text.StartsWith("Strike the deck", StringComparison.Ordinal)) > tasks.FindIndex(task => task.Task.Text.StartsWith("Take down Main", StringComparison.Ordinal)));
    }

    [Fact]
    public void Each_run_is_laid_once_feeders_before_microphone_leads()
    {
        var groups = CableSheetViews.Of(Supper)!.Groups;
        Assert.Equal(Supper.Cables.Runs.Count, groups.Sum(group => group.Runs.Count));
        Assert.StartsWith("Feeders", groups[0].Name, StringComparison.Ordinal);
        Assert.StartsWith("Microphone leads", groups[^1].Name, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_short_or_on_hire_is_ordered_from_the_day_before_to_the_day_after()
    {
        var orders = HireOrderViews.Of(Supper)!.Orders;
        Assert.Equal(["Vale Backline Hire", "Vale Radio Hire"], orders.Select(order => order.Firm));
        Assert.All(orders, order => Assert.Equal(("Fri 11 Sep 2026", "Sun 13 Sep 2026"), (order.From.Text, order.Until.Text)));
        Assert.Contains(orders[1].Lines, line => line.Why.Text == "spare for the speeches");
    }
}
