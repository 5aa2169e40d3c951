using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets names and what is said of them.</summary>
internal static class PairsSetter
{
    private const int LeastColumn = 130_000;

    public static List<Strip> Set(Pairs pairs, int width, Room room)
    {
        if (pairs.Items.Count == 0)
        {
            return [];
        }

        var gap = room.Scale.ColumnGap * 3;
        for (var columns = Math.Clamp(Math.Min(pairs.Columns, pairs.Items.Count), 1, 4); columns > 1; columns--)
        {
            var free = width - (gap * (columns - 1));
            if (free / columns >= LeastColumn && SetSide(pairs, columns, free, gap, room) is { } strip && strip.Height <= room.Height)
            {
                return [strip];
            }
        }

        return SetUnder(pairs.Items, width, room);
    }

    /// <summary>One column, in which a page may end after any pair.</summary>
    private static List<Strip> SetUnder(IReadOnlyList<Pair> items, int width, Room room)
    {
        var group = room.NextGroup();
        var index = 0;
        return [.. Measure(items, width, room).Select(p => new Strip(p.Height, p.Draw(0, 0))
        {
            Group = group,
            InGroup = index++,
            GroupCount = items.Count,
        })];
    }

    /// <summary>Null where a column would be narrower than a word in it that cannot be parted.</summary>
    private static Strip? SetSide(Pairs pairs, int columns, int free, int gap, Room room)
    {
        // First as if all columns were alike, to find where to part them; then each as wide as its own words ask for.
        var heights = Measure(pairs.Items, free / columns, room).ConvertAll(p => p.Height);
        var parts = new List<Pair[]>();
        foreach (var count in Partition.Even(heights, columns))
        {
            parts.Add([.. pairs.Items.Skip(parts.Sum(p => p.Length)).Take(count)]);
        }

        var most = parts.ConvertAll(p => Wish(p, room)).ToArray();
        var least = parts.Select((part, i) => Math.Max(Math.Min(most[i], free / parts.Count * 3 / 4), Needs(part, room))).ToArray();
        if (least.Sum() > free)
        {
            return null;
        }

        var widths = ColumnWidths.Share([], least, most, free);
        var marks = new List<Mark>();
        var (x, tallest) = (0, 0);
        for (var i = 0; i < parts.Count; i++)
        {
            var y = 0;
            foreach (var pair in Measure(parts[i], widths[i], room))
            {
                marks.AddRange(pair.Draw(x, y));
                y += pair.Height;
            }

            x += widths[i] + gap;
            tallest = Math.Max(tallest, y);
        }

        return new Strip(tallest, marks);
    }

    /// <summary>The width at which nothing wraps.</summary>
    private static int Wish(IReadOnlyList<Pair> items, Room room)
    {
        int name = 0, text = 0;
        foreach (var pair in items)
        {
            name = Math.Max(name, room.Composer.Compose(pair.Name, room.Composer.Body).Most);
            text = Math.Max(text, room.Composer.Compose(pair.Text, room.Composer.Body).Most);
        }

        // The name takes two fifths at most, so the whole has to be wide enough for that, too.
        return Math.Max(name + room.Scale.ColumnGap + text, name * 5 / 2) + 10;
    }

    /// <summary>The width at which no word is cut.</summary>
    private static int Needs(IReadOnlyList<Pair> items, Room room)
    {
        var text = items.Max(pair => room.Composer.Compose(pair.Text, room.Composer.Body).Least) + room.Scale.ColumnGap + 10;
        var name = items.Max(pair => room.Composer.Compose(pair.Name, room.Composer.Body).Most);
        return Math.Min(name + text, text * 5 / 3);
    }

    private static List<SetPair> Measure(IReadOnlyList<Pair> items, int width, Room room)
    {
        var composer = room.Composer;
        var soft = composer.Body with { Shade = Shade.Soft };
        var names = items.Select(p => composer.Compose(p.Name, soft)).ToList();
        var nameWidth = Math.Min(names.Max(n => n.Most), width * 2 / 5);
        var indent = nameWidth == 0 ? 0 : nameWidth + room.Scale.ColumnGap;
        return [.. items.Select((p, i) =>
            new SetPair(names[i].Fit(nameWidth), composer.Compose(p.Text, composer.Body).Fit(width - indent), p.Verdict, nameWidth, indent, width - indent, composer.Body.Size / 3))];
    }

    private sealed record SetPair(SetLines Name, SetLines Text, Verdict Verdict, int NameWidth, int Indent, int Width, int Pad)
    {
        /// <summary>Name and text stand on one base line, so the smaller one is moved down.</summary>
        private int Baseline => Math.Max(Name.Baseline, Text.Baseline);

        public int Height => Math.Max(Name.Height - Name.Baseline, Text.Height - Text.Baseline) + Baseline + Pad;

        public List<Mark> Draw(int x, int y)
        {
            var marks = new List<Mark>();
            if (Verdict != Verdict.Plain)
            {
                marks.Add(Verdicts.Ground(Verdict, x + Indent - 2500, y, Width + 2500, Height - (Pad / 2)));
            }

            Name.Draw(marks, x, y + Baseline - Name.Baseline, NameWidth, Align.Left);
            Text.Draw(marks, x + Indent, y + Baseline - Text.Baseline, Width, Align.Left);
            return marks;
        }
    }
}
