namespace Advance.Paper.Tree;

/// <summary>A number or a date: text for people, a value for machines.</summary>
/// <param name="Shown">As it is read; never parted.</param>
/// <param name="Value">As it is worked with.</param>
/// <param name="Style">Default normal.</param>
public sealed record Datum(string Shown, MachineValue Value, TextStyle Style = TextStyle.Normal) : Inline;
