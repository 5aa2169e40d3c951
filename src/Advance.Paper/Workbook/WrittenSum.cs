namespace Advance.Paper.Workbook;

/// <summary>A sum that the workbook works out by itself, with what it comes to for programs that do not.</summary>
/// <param name="Tab">Number of the tab, from 1.</param>
/// <param name="Cell">As <c>B7</c>.</param>
/// <param name="Amount">What it comes to.</param>
internal readonly record struct WrittenSum(int Tab, string Cell, double Amount);
