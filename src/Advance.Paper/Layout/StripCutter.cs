namespace Advance.Paper.Layout;

/// <summary>Cuts what is taller than a page between its lines. All else stays whole.</summary>
internal static class StripCutter
{
    /// <summary>The same strips, those taller than a page cut.</summary>
    public static List<Strip> Cut(List<Strip> strips, Room room)
    {
        if (!strips.Exists(s => s.Height + s.HeadHeight() > room.Height))
        {
            return strips;
        }

        var cut = new List<Strip>();
        foreach (var strip in strips)
        {
            CutOne(strip, room, cut);
        }

        return cut;
    }

    private static void CutOne(Strip strip, Room room, List<Strip> cut)
    {
        var heads = strip.HeadHeight() < room.Height / 2 ? strip.Heads : [];
        var most = room.Height - heads.Sum(h => h.Height);
        if (strip.Height <= most)
        {
            cut.Add(ReferenceEquals(heads, strip.Heads) ? strip : Part(strip, heads, 0, strip.Height));
            return;
        }

        room.Faults.Add(FaultKind.TallerThanPage, "A row or box is taller than a page; it is cut between its lines.");
        for (var top = 0; top < strip.Height;)
        {
            var bottom = strip.Height - top <= most ? strip.Height : LastGap(strip.Marks, top, top + most);
            var part = Part(strip, heads, top, bottom);
            part.BeginsPage = top > 0 || strip.BeginsPage;
            part.Gap = top == 0 ? strip.Gap : 0;
            cut.Add(part);
            top = bottom;
        }
    }

    /// <summary>The lowest place at which no word is cut; the limit itself where each place cuts one.</summary>
    private static int LastGap(List<Mark> marks, int top, int limit)
    {
        var at = limit;
        while (marks.Exists(m => m is not BoxMark and not StrokeMark && m.Top < at && m.Bottom > at))
        {
            at = marks.Where(m => m is not BoxMark and not StrokeMark && m.Top < at && m.Bottom > at).Min(m => m.Top);
            if (at <= top)
            {
                return limit;
            }
        }

        return at;
    }

    private static Strip Part(Strip strip, IReadOnlyList<Strip> heads, int top, int bottom)
    {
        var marks = new List<Mark>();
        foreach (var mark in strip.Marks)
        {
            if (Clip(mark, top, bottom) is { } clipped)
            {
                marks.Add(clipped.Moved(0, -top));
            }
        }

        return new Strip(bottom - top, marks)
        {
            Heads = heads,
            Group = strip.Group,
            InGroup = strip.InGroup,
            GroupCount = strip.GroupCount,
            KeepsNext = strip.KeepsNext && bottom == strip.Height,
            IsWarning = strip.IsWarning,
            IsAside = strip.IsAside,
        };
    }

    private static Mark? Clip(Mark mark, int top, int bottom) => mark switch
    {
        BoxMark box when box.Y < bottom && box.Bottom > top =>
            box with { Y = Math.Max(box.Y, top), Height = Math.Min(box.Bottom, bottom) - Math.Max(box.Y, top) },
        BoxMark => null,
        StrokeMark line when line.X1 == line.X2 && line.Top < bottom && line.Bottom > top =>
            line with { Y1 = Math.Max(line.Top, top), Y2 = Math.Min(line.Bottom, bottom) },
        _ => mark.Top >= top && (mark.Top < bottom || (mark.Top == bottom && mark is StrokeMark)) ? mark : null,
    };
}
