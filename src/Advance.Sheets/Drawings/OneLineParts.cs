using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>
/// The trees of the one-line as they are drawn: what would be wider than the paper is cut at a distribution, which is named where it was and
/// drawn apart, behind the outlet that feeds it.
/// </summary>
internal static class OneLineParts
{
    /// <summary>All of them as they fit on a page, from the first service on, each followed by what was cut off it.</summary>
    public static IReadOnlyList<OneLineNode> Of(Plan plan, OneLineRoom room) => [.. new OneLineTree(plan).All().SelectMany(tree => Narrow(tree, room.Wide))];

    /// <summary>A tree that is narrow enough, and after it what was cut off.</summary>
    internal static IEnumerable<OneLineNode> Narrow(OneLineNode tree, double widest)
    {
        var apart = new List<OneLineNode>();
        while (OneLineDrawing.WidthOf([tree]) > widest && CutOf(tree) is { } cut)
        {
            tree = Replace(tree, cut.Box, cut.Box with { Lines = [cut.Box.Lines[0], "drawn apart"], Children = [] });
            apart.Add(new OneLineNode($"{cut.Feed.Id}/apart", [cut.Feed.Name], [], OneLineLook.Distribution, [cut.Box]));
        }

        return apart.SelectMany(part => Narrow(part, widest)).Prepend(tree);
    }

    // On the longest way, the second distribution that something hangs on: the first stays with what feeds it.
    private static (OneLineNode Feed, OneLineNode Box)? CutOf(OneLineNode tree)
    {
        var way = LongestWay(tree);
        var boxes = way.Zip(way.Skip(1)).Where(one => one.Second is { Looks: OneLineLook.Distribution, Children.Count: > 0 }).ToList();
        return boxes.Count < 2 ? null : boxes[1];
    }

    private static List<OneLineNode> LongestWay(OneLineNode node)
    {
        var way = node.Children.Select(LongestWay).MaxBy(rest => rest.Count) ?? [];
        way.Insert(0, node);
        return way;
    }

    private static OneLineNode Replace(OneLineNode node, OneLineNode old, OneLineNode by) =>
        ReferenceEquals(node, old) ? by : node with { Children = [.. node.Children.Select(child => Replace(child, old, by))] };
}
