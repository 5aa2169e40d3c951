namespace Advance.Sheets.Views;

/// <summary>Getting it all out again.</summary>
/// <param name="Front">Calls, the way out, safety, and the tasks in their order.</param>
/// <param name="KeyForLoadOut">Who holds the key at night; blank where not said.</param>
/// <param name="RestsOn">The open questions that may move the tasks; blank where there are none.</param>
public sealed record LoadOutView(CrewWorkView Front, Cell KeyForLoadOut, Cell RestsOn);
