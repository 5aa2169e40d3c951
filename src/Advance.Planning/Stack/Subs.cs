using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Tells subs from tops.</summary>
internal static class Subs
{
    /// <summary>Marks the subs: what the stock calls so, or what hands on only the highs; where that is none, what the gig crosses in.</summary>
    public static IReadOnlyList<StackedBox> Mark(Stack stack, IReadOnlyList<StackedBox> boxes)
    {
        var isSaid = boxes.Any(IsSub);
        return [.. boxes.Select(box => box with { IsSub = isSaid ? IsSub(box) : IsCrossedIn(stack, box) })];
    }

    private static bool IsSub(StackedBox box) => box.Piece.Kind?.Loudspeaker?.IsSub == true || box.IsCrossing;

    private static bool IsCrossedIn(Stack stack, StackedBox box) =>
        stack.Crossover is { } given && given.Is(out var crossover) && crossover.Within == box.Piece.Item;
}
