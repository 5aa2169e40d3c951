namespace Advance.Sheets.Templating;

/// <summary>Carries the reason for stopping a template through Scriban, which adds the place. Never leaves <see cref="RenderRun"/>.</summary>
internal sealed class StoppedException(string message) : Exception(message);
