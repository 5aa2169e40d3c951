namespace Advance.Planning;

/// <summary>In which order a vehicle is loaded: the tasks of the load-in, backwards.</summary>
internal static class LoadOrder
{
    /// <summary>Orders cases and loose pieces; what no task asks for goes in first. Of one task, the heaviest go in last and come out first.</summary>
    public static IReadOnlyList<LoadRow> Of(Backbone backbone, StockPlan pull, CrewPlan crew)
    {
        var jobs = Jobs.ByItem(backbone.Pieces);
        var tasks = crew.Tasks.Where(task => !task.IsHold).Select((task, index) => (task, index)).ToList();
        var turns = tasks.GroupBy(task => task.task.Job).ToDictionary(group => group.Key, group => group.Min(task => task.index));
        return
        [
            .. pull.Units.Select(unit => RowOf(unit, jobs, turns, crew))
                .OrderByDescending(row => turns.GetValueOrDefault(row.For, int.MaxValue))
                .ThenBy(row => row.Unit.Gross.Value?.Kilograms ?? 0)
                .ThenBy(row => row.Unit.Address),
        ];
    }

    private static LoadRow RowOf(
        TravellingUnit unit, IReadOnlyDictionary<string, Job> jobs, Dictionary<Job, int> turns, CrewPlan crew)
    {
        var items = unit.Contents.Count > 0 ? unit.Contents.Select(packed => packed.Item) : [unit.Item];
        var first = items.Select(item => jobs.GetValueOrDefault(item, Job.None)).MinBy(job => turns.GetValueOrDefault(job, int.MaxValue));
        return new LoadRow(unit, first, crew.Tasks.FirstOrDefault(task => task.Job == first && !task.IsHold));
    }
}
