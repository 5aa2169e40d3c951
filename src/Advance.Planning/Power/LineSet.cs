using System.Collections;

namespace Advance.Planning;

/// <summary>Some of the lines of a supply, counted from 0.</summary>
/// <param name="Bits">One for each line.</param>
internal readonly record struct LineSet(int Bits) : IReadOnlyCollection<int>
{
    /// <inheritdoc/>
    public int Count => System.Numerics.BitOperations.PopCount((uint)Bits);

    /// <summary>All lines of a supply.</summary>
    public static LineSet All(int count) => new((1 << count) - 1);

    /// <summary>These lines.</summary>
    public static LineSet Of(IEnumerable<int> lines) => new(lines.Aggregate(0, (bits, line) => bits | (1 << line)));

    /// <summary>Every set of lines there is, with one line at least.</summary>
    public static IEnumerable<LineSet> Each(int count) => Enumerable.Range(1, (1 << count) - 1).Select(bits => new LineSet(bits)).OrderByDescending(set => set.Count);

    /// <inheritdoc/>
    public IEnumerator<int> GetEnumerator()
    {
        for (var line = 0; Bits >> line != 0; line++)
        {
            if ((Bits >> line & 1) != 0)
            {
                yield return line;
            }
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
