namespace Advance.Sheets.Views;

/// <summary>A finding as it stands on a sheet that has to do with it.</summary>
/// <param name="Weight"><c>stop</c>, <c>concern</c> or <c>note</c>.</param>
/// <param name="Says">Its first line, or what a named person took upon themselves.</param>
/// <param name="Cure">What would put it right; empty where it was accepted.</param>
/// <param name="Rule">Its name.</param>
/// <param name="RestsOn">The open questions behind it; blank where there are none.</param>
public sealed record FindingView(string Weight, string Says, string Cure, string Rule, Cell RestsOn);
