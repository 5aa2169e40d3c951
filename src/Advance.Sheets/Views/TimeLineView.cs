namespace Advance.Sheets.Views;

/// <summary>The day on the called crew: what was written and what the plan makes of it, by time.</summary>
/// <param name="Rows">In the order of their times.</param>
/// <param name="RestsOn">The open questions that may move tasks; blank where there are none.</param>
public sealed record TimeLineView(IReadOnlyList<TimeLineView.Row> Rows, Cell RestsOn)
{
    /// <summary>One thing that happens.</summary>
    /// <param name="From">When it starts.</param>
    /// <param name="Until">When it is done.</param>
    /// <param name="What">A task, a line of the schedule, a set.</param>
    /// <param name="Who">Who does it.</param>
    /// <param name="Where">Where.</param>
    /// <param name="Kind"><c>written</c>, <c>task</c> or <c>set</c>.</param>
    /// <param name="IsHold">Whether all stop there.</param>
    public sealed record Row(Cell From, Cell Until, Cell What, Cell Who, Cell Where, Cell Kind, bool IsHold);
}
