using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets blocks into strips.</summary>
internal sealed class BlockSetter(Room room)
{
    // What a poster gives up of the leading above and below its letters, as shares of the size: accents and tails keep their room.
    private const double PosterAbove = 0.14;
    private const double PosterBelow = 0.06;
    private const double PlainAbove = 0.25;
    private const double PlainBelow = 0.24;

    private const int Deepest = 12;

    private int depth;

    /// <summary>Sets blocks one under the other.</summary>
    /// <param name="blocks">From top to bottom.</param>
    /// <param name="width">In 1/1000 pt.</param>
    public List<Strip> Set(IReadOnlyList<Block> blocks, int width)
    {
        var strips = new List<Strip>();
        if (depth >= Deepest)
        {
            room.Faults.Add(FaultKind.TooDeep, $"Blocks are nested more than {Deepest} deep; what lies deeper is left out.");
            return strips;
        }

        depth++;
        var space = 0;
        var breaks = false;
        foreach (var block in blocks)
        {
            switch (block)
            {
                case Space s:
                    space += Mil.FromMm(Math.Clamp(double.IsFinite(s.Mm) ? s.Mm : 0, 0, 400));
                    continue;
                case PageBreak:
                    breaks = strips.Count > 0;
                    continue;
            }

            room.Faults.Place = block.Id ?? FirstWords.Of(block);
            var set = SetOne(block, width);
            if (set.Count == 0)
            {
                continue;
            }

            if (strips.Count > 0)
            {
                set[0].Gap = Math.Max(set[0].Gap, room.Scale.BlockGap) + space;
            }

            set[0].BeginsPage |= breaks;
            if (block.Id is { } id)
            {
                set[0].Marks.Insert(0, new AnchorMark(0, id) { Bookmark = (block as Heading) is { Level: 1 } h ? FirstWords.Of(h) : null });
            }

            strips.AddRange(set);
            (space, breaks) = (0, false);
        }

        depth--;
        room.Faults.Place = "";
        return strips;
    }

    private List<Strip> SetOne(Block block, int width) => block switch
    {
        Heading heading => [SetHeading(heading, width)],
        Paragraph paragraph => Lines(room.Composer.Compose(paragraph.Text, room.Composer.Body), width, paragraph.Align),
        ItemList list => ItemListSetter.Set(list, width, room),
        Pairs pairs => PairsSetter.Set(pairs, width, room),
        Table table => new TableSetter(table, width, room).Set(),
        Columns columns => ColumnsSetter.Set(columns, width, room, this),
        KeepTogether kept => Keep(Set(kept.Blocks, width)),
        Caution or Remark => [WarningSetter.Set(block, width, room)],
        Picture picture => PictureBlocks.Set(picture, width, room),
        Alongside alongside => AlongsideSetter.Set(alongside, width, room),
        Poster poster => [SetPoster(poster, width)],
        Rule => [new Strip(500, [new StrokeMark(0, 250, width, 250, 350, Shade.Hair)]) { IsAside = true }],
        _ => [],
    };

    /// <summary>One strip a line, so that a page may end inside a paragraph, but never with a lone line.</summary>
    private List<Strip> Lines(SetText text, int width, Align align)
    {
        var lines = text.Fit(width);
        var strips = new List<Strip>();
        var group = room.NextGroup();
        for (var i = 0; i < lines.Count; i++)
        {
            var marks = new List<Mark>();
            var height = lines.DrawOne(marks, i, width, align);
            strips.Add(new Strip(height, marks) { Group = group, InGroup = i, GroupCount = lines.Count, IsAside = true });
        }

        if (strips.Count > 1)
        {
            strips[0].KeepsNext = true;
            strips[^2].KeepsNext = true;
        }

        return strips;
    }

    private Strip SetHeading(Heading heading, int width)
    {
        var scale = room.Scale;
        var style = heading.Level <= 1 ? new TypeStyle(scale.Large, IsStrong: true, Shade.Ink)
            : room.Composer.Body with { IsStrong = true, Shade = heading.Level == 2 ? Shade.Ink : Shade.Soft };
        var lines = room.Composer.Compose(heading.Text, style).Fit(width);
        var marks = new List<Mark>();
        lines.Draw(marks, 0, 0, width, Align.Left);
        return new Strip(lines.Height, marks) { KeepsNext = true, Gap = scale.BlockGap * (heading.Level <= 1 ? 3 : 2) / 2 };
    }

    private Strip SetPoster(Poster poster, int width)
    {
        const int probe = 100_000;
        var style = new TypeStyle(probe, IsStrong: true, Shade.Ink);
        var natural = Math.Max(1, room.Composer.Compose(poster.Text, style).Most);
        var byHeight = (int)(Mil.FromMm(Math.Clamp(poster.MostMm, 1, 200)) / BuiltIn.CapHeight);
        var size = Math.Min(byHeight, (int)((long)probe * width / natural));
        size = Math.Min(size, (int)(room.Height / TypeScale.Leading(1000) * 1000.0));
        var lines = room.Composer.Compose(poster.Text, style with { Size = Math.Max(size, 1000) }).Fit(width + 1000);
        var marks = new List<Mark>();
        var isPlain = IsPlain(poster.Text);
        var above = (int)(size * (isPlain ? PlainAbove : PosterAbove));
        lines.Draw(marks, 0, -above, width, Align.Left);
        return new Strip(lines.Height - above - (int)(size * (isPlain ? PlainBelow : PosterBelow)), marks);
    }

    // Capitals and figures without accents need no room above and below.
    private static bool IsPlain(string text) => text.All(letter => char.IsAsciiLetterUpper(letter) || char.IsAsciiDigit(letter) || letter == ' ');

    private static List<Strip> Keep(List<Strip> strips)
    {
        for (var i = 0; i + 1 < strips.Count; i++)
        {
            strips[i].KeepsNext = true;
        }

        return strips;
    }
}
