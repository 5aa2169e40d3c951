namespace Advance.Sheets.Views;

/// <summary>Getting it all in.</summary>
/// <param name="Front">Calls, the way in, safety, and the tasks in the order of their times.</param>
/// <param name="RestsOn">The open questions that may move the tasks; blank where there are none.</param>
public sealed record LoadInView(CrewWorkView Front, Cell RestsOn);
