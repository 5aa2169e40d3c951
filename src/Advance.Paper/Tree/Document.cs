namespace Advance.Paper.Tree;

/// <summary>Everything that is printed together: one PDF, one workbook, one HTML page.</summary>
/// <param name="Info">What the three files say about themselves.</param>
/// <param name="Sheets">In the order in which they are printed; each begins on a new page.</param>
public sealed record Document(DocumentInfo Info, IReadOnlyList<Sheet> Sheets);
