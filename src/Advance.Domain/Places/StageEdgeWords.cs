namespace Advance.Domain.Places;

/// <summary>What the edges of a stage are called.</summary>
public static class StageEdgeWords
{
    /// <summary>Every edge with its word, in the order in which they are listed.</summary>
    public static IReadOnlyList<(string Word, StageEdges Edge)> All { get; } =
    [
        ("front", StageEdges.Front), ("rear", StageEdges.Rear), ("SR", StageEdges.StageRight), ("SL", StageEdges.StageLeft),
    ];

    /// <summary><c>none</c>, <c>rear</c>, <c>rear, SR, SL</c>.</summary>
    public static string Of(StageEdges edges) =>
        edges == StageEdges.None ? "none" : string.Join(", ", All.Where(named => edges.HasFlag(named.Edge)).Select(named => named.Word));
}
