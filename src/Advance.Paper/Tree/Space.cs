namespace Advance.Paper.Tree;

/// <summary>Empty room, dropped at the top of a page.</summary>
/// <param name="Mm">Height in mm, 0 or more.</param>
public sealed record Space(double Mm) : Block;
