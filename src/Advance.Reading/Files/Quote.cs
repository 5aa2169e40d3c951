namespace Advance.Reading.Files;

/// <summary>A line to be printed with a caret under part of it.</summary>
/// <param name="Line">The line, without its end.</param>
/// <param name="Start">Where the caret starts, counted from 0 in UTF-16 units; at most the line's length.</param>
/// <param name="Length">How many units it underlines, at least 1; it may reach one past the line's end.</param>
public readonly record struct Quote(string Line, int Start, int Length);
