namespace Advance.Paper.Tree;

/// <summary>Text. Spaces, tabs and line ends all count as one space; a no-break space holds.</summary>
/// <param name="Value">What it says, as it shall be read; nothing in it is markup.</param>
/// <param name="Style">Default normal.</param>
public sealed record Text(string Value, TextStyle Style = TextStyle.Normal) : Inline;
