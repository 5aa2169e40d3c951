namespace Advance.Sheets.Templating;

/// <summary>Markup made by code, in which every value is escaped already; a template prints it as it is.</summary>
/// <param name="Xhtml">Whole elements of the subset, and escaped text.</param>
public sealed record TrustedMarkup(string Xhtml);
