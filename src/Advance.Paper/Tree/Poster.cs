namespace Advance.Paper.Tree;

/// <summary>One line of text as large as the width allows, to be read from afar.</summary>
/// <param name="Text">What it says; never wrapped.</param>
/// <param name="MostMm">Height of a capital letter at most, in mm. Set smaller where the width does not allow it.</param>
public sealed record Poster(string Text, double MostMm) : Block;
