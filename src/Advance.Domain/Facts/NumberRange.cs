namespace Advance.Domain.Facts;

/// <summary>A channel, a port, or several in a row: <c>7</c>, <c>10-11</c>.</summary>
/// <param name="First">The first, at least 1.</param>
/// <param name="Last">The last, not before the first.</param>
public readonly record struct NumberRange(int First, int Last) : IComparable<NumberRange>
{
    /// <summary>How many, at least 1.</summary>
    public int Count => Last - First + 1;

    /// <summary>Orders by first, then last.</summary>
    public int CompareTo(NumberRange other) => First != other.First ? First.CompareTo(other.First) : Last.CompareTo(other.Last);

    /// <summary><c>7</c> or <c>10-11</c>.</summary>
    public override string ToString() => First == Last ? $"{First}" : $"{First}-{Last}";
}
