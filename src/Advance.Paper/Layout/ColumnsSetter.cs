using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets blocks side by side.</summary>
internal static class ColumnsSetter
{
    public static List<Strip> Set(Columns columns, int width, Room room, BlockSetter setter)
    {
        var gap = room.Scale.ColumnGap * 5 / 2;
        var parts = columns.Parts;
        var free = width - (gap * (parts.Count - 1));
        var shares = parts.Sum(p => Share(p));
        var sides = new List<(int X, List<Strip> Strips)>();
        var x = 0;
        foreach (var part in parts)
        {
            var each = (int)(free * Share(part) / shares);
            sides.Add((x, setter.Set(part.Blocks, each)));
            x += each + gap;
        }

        var tallest = sides.Count == 0 ? 0 : sides.Max(s => Height(s.Strips));
        if (tallest == 0)
        {
            return [];
        }

        return tallest <= room.Height ? [Merge(sides, tallest)] : OverPages(sides, room);
    }

    private static double Share(ColumnsPart part) => double.IsFinite(part.Share) && part.Share > 0 ? part.Share : 1;

    private static int Height(List<Strip> strips)
    {
        var height = 0;
        for (var i = 0; i < strips.Count; i++)
        {
            height += strips[i].Height + (i == 0 ? 0 : strips[i].Gap);
        }

        return height;
    }

    private static Strip Merge(List<(int X, List<Strip> Strips)> sides, int height)
    {
        var marks = new List<Mark>();
        foreach (var (x, strips) in sides)
        {
            var y = 0;
            for (var i = 0; i < strips.Count; i++)
            {
                y += i == 0 ? 0 : strips[i].Gap;
                foreach (var mark in strips[i].Marks)
                {
                    marks.Add(mark.Moved(x, y));
                }

                y += strips[i].Height;
            }
        }

        var all = sides.SelectMany(side => side.Strips).ToList();
        return new Strip(height, marks) { IsWarning = all.Exists(strip => strip.IsWarning), IsAside = all.TrueForAll(strip => strip.IsAside) };
    }

    /// <summary>Each side is paged by itself; what falls on the same page stands side by side again.</summary>
    private static List<Strip> OverPages(List<(int X, List<Strip> Strips)> sides, Room room)
    {
        var paged = sides.ConvertAll(s => (s.X, Pages: Paging.Pages(StripCutter.Cut(s.Strips, room), room.Height)));
        var strips = new List<Strip>();
        for (var page = 0; page < paged.Max(p => p.Pages.Count); page++)
        {
            var here = paged.Where(p => page < p.Pages.Count).Select(p => (p.X, p.Pages[page].WithHeads())).ToList();
            strips.Add(Merge(here, here.Max(h => Height(h.Item2))));
        }

        return strips;
    }
}
