namespace Advance.Sheets.Views;

/// <summary>What a rule has to say, on the sheet that it is about.</summary>
/// <param name="Weight"><c>stop</c>, <c>concern</c> or <c>note</c>.</param>
/// <param name="Says">First line, which stands alone.</param>
/// <param name="Rule">The rule's name.</param>
/// <param name="Cure">What would put it right.</param>
/// <param name="Accepted">Who accepted it and why; empty where nobody did.</param>
/// <param name="RestsOn">The open questions behind it; blank where there is none.</param>
public sealed record RemarkView(string Weight, string Says, string Rule, string Cure, string Accepted, Cell RestsOn);
