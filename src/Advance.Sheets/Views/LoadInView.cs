namespace Advance.Sheets.Views;

/// <summary>Getting it all in.</summary>
/// <param name="Front">Calls, the way in, safety, and the tasks in the order of their times.</param>
/// <param name="SwitchOn">In which order devices are closed after the test; empty where nothing draws power.</param>
/// <param name="RestsOn">The open questions that may move the tasks; blank where there are none.</param>
public sealed record LoadInView(CrewWorkView Front, IReadOnlyList<LoadInView.Step> SwitchOn, Cell RestsOn)
{
    /// <summary>One device that is closed.</summary>
    /// <param name="Number">From 1 on.</param>
    /// <param name="Device">Which.</param>
    /// <param name="Feeds">What comes on with it.</param>
    /// <param name="Inrush">What all of it draws at the first moment, peak, A.</param>
    /// <param name="Before">What is done before it is closed; blank for nothing.</param>
    public sealed record Step(Cell Number, Cell Device, Cell Feeds, Cell Inrush, Cell Before);
}
