namespace Advance.Sheets.Drawings;

/// <summary>A box of the signal diagram.</summary>
/// <param name="Id">Unique in the diagram.</param>
/// <param name="Title">Its name.</param>
/// <param name="Lines">What is said under it.</param>
internal sealed record SignalNode(string Id, string Title, IReadOnlyList<string> Lines);
