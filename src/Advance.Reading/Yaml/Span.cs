namespace Advance.Reading.Yaml;

/// <summary>A part of a text.</summary>
/// <param name="Start">Counted from 0.</param>
/// <param name="End">One past the last unit.</param>
internal readonly record struct Span(int Start, int End)
{
    public int Length => End - Start;

    public bool Touches(int start, int end) => start < End && Start < Math.Max(end, start + 1);
}
