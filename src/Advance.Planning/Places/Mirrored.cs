using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>One thing, or the two of a mirrored pair, by name.</summary>
/// <param name="Name">With its side where there is a side: <c>Main SR</c>.</param>
/// <param name="Side">Null for a thing without sides.</param>
/// <param name="Index">0 for the first as written, 1 for its twin.</param>
public readonly record struct Mirrored(string Name, Side? Side, int Index)
{
    /// <summary>Every one of them, in the order written.</summary>
    public static IReadOnlyList<Mirrored> Each(string name, Sides? sides) =>
        sides is { } both
            ? [.. both.InOrder.Select((side, index) => new Mirrored($"{name} {(side == Domain.Places.Side.StageRight ? "SR" : "SL")}", side, index))]
            : [new Mirrored(name, null, 0)];
}
