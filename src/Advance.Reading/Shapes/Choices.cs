namespace Advance.Reading.Shapes;

/// <summary>Decides how a sample goes on. The decisions come from outside, so that a test can draw and shrink them.</summary>
/// <param name="next">Gives a number from 0 to one less than it is given.</param>
internal sealed class Choices(Func<int, int> next)
{
    private static readonly string[] Names = ["Main", "FOH", "PD1", "drum riser", "The Threshers", "5-6", "B", "No", "O'Brien & Sons"];

    /// <summary>How many records the sample stands in; deep down little more is added.</summary>
    public int Depth { get; set; }

    /// <summary>A number from 0 to one less than <paramref name="below"/>.</summary>
    public int Next(int below) => next(below);

    /// <summary>One of several.</summary>
    public T Pick<T>(IReadOnlyList<T> of) => of[next(of.Count)];

    /// <summary>Whether something that may be left out is written; less likely the deeper it stands.</summary>
    public bool Writes() => next(2 + (2 * Depth)) == 0;

    /// <summary>A few different names.</summary>
    public IReadOnlyList<string> SomeNames(int atLeast = 0)
    {
        var first = next(Names.Length);
        return [.. Enumerable.Range(first, atLeast + next(3)).Select(index => Names[index % Names.Length])];
    }
}
