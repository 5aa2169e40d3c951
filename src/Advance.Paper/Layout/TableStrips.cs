using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets the strips of a table, or of a part of one that is split, on a grid.</summary>
internal sealed class TableStrips(SetTable set, Grid grid, Room room)
{
    private readonly RowSetter rows = new(set, grid, room);
    private readonly List<Strip> strips = [];
    private Strip head = null!;

    public List<Strip> Set()
    {
        head = rows.Head();
        strips.Add(head);
        for (var i = 0; i < set.Groups.Length; i++)
        {
            AddGroup(set.Table.Groups[i], set.Groups[i]);
        }

        if (strips.Count == 1 && set.Table.WhenEmpty.Count > 0)
        {
            strips.Add(rows.FullWidth(set.Table.WhenEmpty, room.Composer.Quiet, [head]));
        }

        AddFoot();
        return strips;
    }

    private void AddGroup(RowGroup group, SetRow[] members)
    {
        var number = room.NextGroup();
        var before = strips.Count;
        Strip[] heads = [head];
        var index = 0;
        var count = members.Length + (group.Head.Count > 0 ? 1 : 0);
        if (group.Head.Count > 0)
        {
            var style = room.Composer.Body with { IsStrong = true };
            var first = rows.GroupHead(group.Head, style, [head], number, count);
            strips.Add(first);
            index++;
            Text continued = new($" {room.Words.Continued}", TextStyle.Quiet);
            heads = [head, rows.GroupHead([.. group.Head, continued], style, [], 0, 0)];
        }

        for (var i = 0; i < members.Length; i++)
        {
            var next = i + 1 < members.Length ? members[i + 1].Row : null;
            var strip = rows.Set(members[i], i > 0 ? members[i - 1].Row : null, next, heads, number, index++, count);
            strip.KeepsNext = members[i].Row.JoinsNext || (next?.Kind == RowKind.Sub && !MayPart(members, i)) || (i == 0 && next is not null);
            strip.IsInside = next?.Kind == RowKind.Sub;
            strips.Add(strip);
        }

        // A group without rows is found where it would stand.
        if (group.Id is { } id)
        {
            strips[Math.Min(before, strips.Count - 1)].Marks.Insert(0, new AnchorMark(0, id));
        }
    }

    // Of a row and those that belong to it, two stay on each side.
    private static bool MayPart(SetRow[] members, int after) => IsSub(members, after) && IsSub(members, after + 1) && IsSub(members, after + 2);

    private static bool IsSub(SetRow[] members, int at) => at >= 0 && at < members.Length && members[at].Row.Kind == RowKind.Sub;

    private void AddFoot()
    {
        if (set.Foot.Length > 0)
        {
            strips[^1].KeepsNext = true;
        }

        for (var i = 0; i < set.Foot.Length; i++)
        {
            var strip = rows.Set(set.Foot[i], null, null, [head], 0, 0, 0);
            strip.KeepsNext = i + 1 < set.Foot.Length;
            strips.Add(strip);
        }
    }
}
