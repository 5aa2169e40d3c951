namespace Advance.Sheets.Views;

/// <summary>A name and what is said of it.</summary>
/// <param name="Name">Quiet, at the left.</param>
/// <param name="Value">What is said.</param>
public sealed record PairView(string Name, Cell Value);
