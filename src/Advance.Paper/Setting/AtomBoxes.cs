using Advance.Paper.Layout;

namespace Advance.Paper.Setting;

/// <summary>Draws what stands in a line and is no word.</summary>
internal static class AtomBoxes
{
    public static void Draw(List<Mark> marks, in Atom atom, int x, int baseline, int width, int hairline)
    {
        switch (atom.Box)
        {
            case AtomBox.Tick:
                // Its middle stands level with the middle of the capitals.
                var top = baseline - (atom.Style.Cap / 2) - (width / 2);
                marks.Add(new BoxMark(x, top, width, width) { Outline = 700 });
                break;
            case AtomBox.Write:
                marks.Add(new StrokeMark(x, baseline + 1500, x + width, baseline + 1500, hairline, Shade.Soft));
                break;
            case AtomBox.Outlined outlined:
                DrawTag(marks, outlined, atom.Style, x, baseline, width);
                break;
            case AtomBox.Gauge gauge:
                DrawGauge(marks, gauge, x, baseline, width);
                break;
            case AtomBox.Page page:
                marks.Add(new PageMark(x, baseline, atom.Style, page.Target));
                break;
        }
    }

    private static void DrawTag(List<Mark> marks, AtomBox.Outlined tag, TypeStyle style, int x, int baseline, int width)
    {
        var height = (int)(style.Size * 1.36);
        var top = baseline - (style.Cap / 2) - (height / 2);
        marks.Add(new BoxMark(x, top, width, height) { Outline = 600, Radius = height * 2 / 5, Fill = Shade.White });
        var words = new PlacedWord[tag.Words.Length];
        var inner = width - style.Size;
        var at = 0;
        var widths = tag.Words.Sum(w => w.Width(style.Size));
        var space = tag.Words.Length > 1 ? (inner - widths) / (tag.Words.Length - 1) : 0;
        for (var i = 0; i < words.Length; i++)
        {
            words[i] = new PlacedWord(tag.Words[i], at, i > 0);
            at += tag.Words[i].Width(style.Size) + space;
        }

        if (words.Length > 0)
        {
            marks.Add(new RunMark(x + (style.Size / 2), baseline, style, words, inner));
        }
    }

    private static void DrawGauge(List<Mark> marks, AtomBox.Gauge gauge, int x, int baseline, int room)
    {
        const int height = 2300;
        var width = Math.Min(room, Mil.FromMm(26));
        var left = x + room - width;
        var top = baseline - height - 900;
        marks.Add(new BoxMark(left, top, width, height) { Fill = Shade.Pale });
        var used = (int)(Math.Min(gauge.Share, 1) * width);
        if (used > 0)
        {
            marks.Add(new BoxMark(left, top, used, height) { Fill = Shade.Ink });
        }

        if (gauge.Policy is { } policy and >= 0 and <= 1)
        {
            var at = left + (int)(policy * width);
            var isHidden = gauge.Share >= policy;
            marks.Add(new StrokeMark(at, top - 1500, at, top + height + 1500, 700, Shade.Ink));
            if (isHidden)
            {
                marks.Add(new StrokeMark(at, top, at, top + height, 700, Shade.White));
            }
        }

        if (gauge.Share > 1)
        {
            marks.Add(new StrokeMark(left + width, top - 1500, left + width, top + height + 1500, 1800, Shade.Ink));
        }
    }
}
