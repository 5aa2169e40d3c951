using Advance.Paper.Tree;

namespace Advance.Paper.Pictures;

/// <summary>One line of a label.</summary>
/// <param name="Text">What it says; never wrapped.</param>
/// <param name="Style">Default strong, as a name.</param>
public sealed record LabelLine(string Text, TextStyle Style = TextStyle.Strong);
