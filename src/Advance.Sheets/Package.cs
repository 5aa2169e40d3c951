namespace Advance.Sheets;

/// <summary>A package, ready to be written.</summary>
/// <param name="Files">Names without folders, and contents; empty where something is wrong with a template.</param>
/// <param name="Sheets">Titles of the sheets in it, in order.</param>
/// <param name="Faults">What could not be printed as it stands.</param>
public sealed record Package(
    IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> Files, IReadOnlyList<string> Sheets, IReadOnlyList<string> Faults);
