namespace Advance.Paper.Tree;

/// <summary>One name and what is said of it.</summary>
/// <param name="Name">Quiet, at the left.</param>
/// <param name="Text">What is said.</param>
public sealed record Pair(IReadOnlyList<Inline> Name, IReadOnlyList<Inline> Text)
{
    /// <summary>How the text fared when it was judged. Default plain.</summary>
    public Verdict Verdict { get; init; }
}
