using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>The head and foot of a sheet's pages. All but the number of the page is the same on each.</summary>
internal sealed class Furniture
{
    private const int RuleGap = 9500;
    private const int RuleWeight = 700;
    private const int BoxSide = 35500;
    private const int MiddleGap = 22000;
    private const int SideGap = 6000;

    // The head is read close by on each class of sheet.
    private const int Largest = 10_000;

    private readonly Composer composer;
    private readonly Wording words;
    private readonly Sheet sheet;
    private readonly int width;
    private readonly List<Mark> head = [];
    private readonly List<Mark> foot = [];
    private readonly TypeStyle quiet;
    private int pageX;
    private int pageY;

    public Furniture(Sheet sheet, int width, Composer composer, Wording words)
    {
        (this.sheet, this.width, this.composer, this.words) = (sheet, width, composer, words);
        quiet = composer.Quiet with { Size = Math.Min(composer.Scale.Small, Largest) };
        var right = SetRight(out var sideHeight);
        var middle = SetMiddle(right, out var middleHeight);
        var titleHeight = SetTitle(middle);
        var tallest = Math.Max(Math.Max(sideHeight, middleHeight), titleHeight);
        var rule = tallest + RuleGap;
        head.Add(new StrokeMark(0, rule, width, rule, RuleWeight, Shade.Ink));
        HeadHeight = rule + (composer.Scale.Body * 6 / 5);
        FootHeight = SetFoot();
    }

    /// <summary>From the top margin to the body, in 1/1000 pt.</summary>
    public int HeadHeight { get; }

    /// <summary>From the body to the bottom margin, in 1/1000 pt.</summary>
    public int FootHeight { get; }

    public IReadOnlyList<Mark> Foot => foot;

    /// <summary>The head of a page.</summary>
    public List<Mark> Head(int page, int pages)
    {
        var marks = new List<Mark>(head);
        composer.Compose($"{words.Page} {page} {words.Of} {pages}", quiet).Fit(width).Draw(marks, pageX, pageY, width, Align.Left);
        return marks;
    }

    /// <summary>The day of issue and the page at the right, with the revision in its box; answers where they begin.</summary>
    private int SetRight(out int height)
    {
        var line = TypeScale.Leading(quiet.Size);
        var issued = sheet.Head.Issued.Length == 0 ? SetText.Empty : composer.Compose(words.Issued, quiet);
        var day = composer.Compose(sheet.Head.Issued, quiet with { IsStrong = true, Shade = Shade.Ink });
        var page = composer.Compose($"{words.Page} 88 {words.Of} 88", quiet);
        var side = Math.Max(issued.Most, Math.Max(day.Most, page.Most));
        side = Math.Min(side, width / 3);
        var x = width - side;
        var y = Math.Max(0, (BoxSide - (line * (issued.IsEmpty ? 1 : 3))) / 2);
        foreach (var text in new[] { issued, day })
        {
            if (text.IsEmpty)
            {
                continue;
            }

            text.Fit(side).Draw(head, x, y, side, Align.Left);
            y += text.Fit(side).Height;
        }

        (pageX, pageY) = (x, y);
        height = Math.Max(BoxSide, y + line);
        return sheet.Head.Revision.Length == 0 ? x : SetRevision(x - SideGap);
    }

    /// <summary>A letter or two as large as the box; words smaller, in a box as wide as they need.</summary>
    private int SetRevision(int right)
    {
        var isLetter = sheet.Head.Revision.Length <= 2;
        var style = new TypeStyle(isLetter ? 24_000 : 13_000, IsStrong: true, Shade.Ink);
        var text = composer.Compose(sheet.Head.Revision, style);
        var pad = isLetter ? 5000 : 7000;
        var boxWidth = Math.Min(Math.Max(BoxSide, text.Most + (2 * pad)), width / 3);
        var lines = text.Fit(boxWidth - (2 * pad) + 1000);
        var x = right - boxWidth;
        head.Add(new BoxMark(x, 0, boxWidth, BoxSide) { Outline = 800 });
        lines.Draw(head, x, (BoxSide - lines.Height) / 2, boxWidth, Align.Centre);
        return x;
    }

    private int SetMiddle(int right, out int height)
    {
        height = 0;
        if (sheet.Head.Lines.Count == 0)
        {
            return right;
        }

        var edge = right - MiddleGap;
        var rest = composer.Body with { Size = Math.Min(composer.Scale.Body, Largest) };
        var first = rest with { Size = rest.Size * 9 / 8, IsStrong = true };
        var texts = sheet.Head.Lines.Select((line, i) => composer.Compose(line, i == 0 ? first : rest)).ToList();
        var title = composer.Compose(sheet.Head.Title, new TypeStyle(composer.Scale.Title, IsStrong: true, Shade.Ink)).Most;
        // The title has room for its one line at its least size; the lines beside it wrap first.
        var share = Math.Max(0.7, (double)composer.Scale.Large / composer.Scale.Title) + 0.01;
        var most = Math.Min(texts.Max(t => t.Most), Math.Max(width / 3, edge - (int)(title * share) - (MiddleGap / 2)));
        foreach (var text in texts)
        {
            var lines = text.Fit(most);
            lines.Draw(head, edge - most, height, most, Align.Right);
            height += lines.Height;
        }

        return edge - most;
    }

    /// <summary>The title steps down in size before it wraps.</summary>
    private int SetTitle(int right)
    {
        var most = Math.Max(60_000, right - (MiddleGap / 2));
        var style = new TypeStyle(composer.Scale.Title, IsStrong: true, Shade.Ink);
        while (style.Size > composer.Scale.Large && composer.Compose(sheet.Head.Title, style).Most > most)
        {
            style = style with { Size = style.Size - 1000 };
        }

        var lines = composer.Compose(sheet.Head.Title, style).Fit(most);
        // The capitals of the title begin level with the box.
        var y = -(TypeScale.Baseline(style.Size) - style.Cap) + 1500;
        lines.Draw(head, 0, y, most, Align.Left);
        y += lines.Height;
        var reader = composer.Compose(sheet.Head.For, quiet).Fit(most);
        reader.Draw(head, 0, y, most, Align.Left);
        return y + reader.Height;
    }

    private int SetFoot()
    {
        var ink = quiet with { Shade = Shade.Ink };
        var right = composer.Compose(sheet.Foot.Right, ink);
        var rightWidth = Math.Min(right.Most, width / 2);
        var leftWidth = width - rightWidth - (rightWidth > 0 ? composer.Scale.Body : 0);
        var leftLines = composer.Compose(sheet.Foot.Left, quiet).Fit(leftWidth);
        var rightLines = right.Fit(rightWidth);
        var textHeight = Math.Max(Math.Max(leftLines.Height, rightLines.Height), TypeScale.Leading(quiet.Size));
        var gap = composer.Scale.Body;
        foot.Add(new StrokeMark(0, gap, width, gap, 350, Shade.Ink));
        var y = gap + 5000;
        leftLines.Draw(foot, 0, y, leftWidth, Align.Left);
        rightLines.Draw(foot, width - rightWidth, y, rightWidth, Align.Right);
        return y + textHeight;
    }
}
