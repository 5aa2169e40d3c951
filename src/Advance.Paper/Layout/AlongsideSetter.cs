using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets a picture with table rows level with its bands. Rows that find no room there are pushed down and joined by a line, or stand under it.</summary>
internal static class AlongsideSetter
{
    public static List<Strip> Set(Alongside alongside, int width, Room room)
    {
        var share = double.IsFinite(alongside.PictureShare) ? Math.Clamp(alongside.PictureShare, 0.1, 0.9) : 0.38;
        var gap = room.Scale.ColumnGap * 5 / 2;
        var pictureWidth = (int)((width - gap) * share);
        var left = pictureWidth + gap;
        var table = new TableSetter(alongside.Table, width - left, room).Set();
        if (room.Pictures.Set(alongside.Scene, pictureWidth, room.Height - HeadHeight(table, alongside)) is not { } picture)
        {
            return table;
        }

        var top = HeadHeight(table, alongside);
        var marks = new List<Mark> { new PictureMark(picture.Width, picture.Height, picture) { Y = top } };
        var (bottom, rest) = DrawRows(alongside, table, picture, (left, gap, top), marks);
        var height = Math.Max(bottom, top + picture.Height);
        return height <= room.Height ? [new Strip(height, marks), .. Below(table, rest, left, room.NextGroup())] : Apart(picture, table, room);
    }

    /// <summary>Rows that begin under the picture: a page may end between them, but leaves none alone.</summary>
    private static IEnumerable<Strip> Below(List<Strip> table, int rest, int left, int group)
    {
        // Two more than there are: what stands beside the picture is not alone.
        const int beside = 2;
        for (var i = rest; i < table.Count; i++)
        {
            yield return new Strip(table[i].Height, [.. table[i].Marks.Select(mark => mark.Moved(left, 0))])
            {
                Heads = [.. table[i].Heads.Select(head => new Strip(head.Height, [.. head.Marks.Select(mark => mark.Moved(left, 0))]))],
                KeepsNext = table[i].KeepsNext,
                Group = group,
                InGroup = beside + i - rest,
                GroupCount = beside + table.Count - rest,
            };
        }
    }

    /// <summary>What stands over the first body row.</summary>
    private static int HeadHeight(List<Strip> table, Alongside alongside)
    {
        var rows = alongside.Table.Groups.Sum(g => g.Rows.Count) + alongside.Table.Foot.Count;
        var height = 0;
        for (var i = 0; i < table.Count - rows; i++)
        {
            height += table[i].Height;
        }

        return height;
    }

    /// <summary>Draws the rows that begin beside the picture; answers where they end, and the first that does not.</summary>
    private static (int Bottom, int Next) DrawRows(Alongside alongside, List<Strip> table, SetPicture picture, (int Left, int Gap, int Top) at, List<Mark> marks)
    {
        var first = table.Count - alongside.Table.Groups.Sum(g => g.Rows.Count) - alongside.Table.Foot.Count;
        var y = 0;
        for (var i = 0; i < table.Count; i++)
        {
            if (i > first && y >= at.Top + picture.Height)
            {
                return (y, i);
            }

            if (i >= first && i - first < alongside.Bands.Count)
            {
                var band = alongside.Bands[i - first];
                int top = at.Top + picture.Down(band.Top), bottom = at.Top + picture.Down(band.Bottom);
                if (y + (table[i].Height / 2) > bottom)
                {
                    marks.Add(Join(at.Left, at.Gap, (top + bottom) / 2, y + (table[i].Height / 2)));
                }

                y = Math.Max(y, top);
            }

            foreach (var mark in table[i].Marks)
            {
                marks.Add(mark.Moved(at.Left, y));
            }

            y += table[i].Height;
        }

        return (y, table.Count);
    }

    private static StrokeMark Join(int left, int gap, int from, int to) => new(left - gap, from, left - (gap / 5), to, 350, Shade.Soft);

    private static List<Strip> Apart(SetPicture picture, List<Strip> table, Room room)
    {
        if (table.Count > 0)
        {
            table[0].Gap = room.Scale.BlockGap;
        }

        return [new Strip(picture.Height, [new PictureMark(picture.Width, picture.Height, picture)]), .. table];
    }
}
