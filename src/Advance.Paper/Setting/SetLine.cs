namespace Advance.Paper.Setting;

/// <summary>A line of a set text.</summary>
/// <param name="Start">Its first atom.</param>
/// <param name="Count">How many atoms it has, 1 or more.</param>
/// <param name="Width">What they take, in 1/1000 pt.</param>
internal readonly record struct SetLine(int Start, int Count, int Width);
