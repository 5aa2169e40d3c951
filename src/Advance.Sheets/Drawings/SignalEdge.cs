namespace Advance.Sheets.Drawings;

/// <summary>A connection of the signal diagram, of one lead or several side by side.</summary>
/// <param name="From">Id of a node.</param>
/// <param name="To">Id of a node.</param>
/// <param name="Label">Ports and leads, a line each; said where it goes in.</param>
internal sealed record SignalEdge(string From, string To, IReadOnlyList<string> Label);
