using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Lays one sheet out. What does not fit is tried again: on its side, a size smaller, and with wide tables split.</summary>
internal sealed class SheetLayout(Sheet sheet, Shaper shaper, Targets targets, Wording words, Faults faults)
{
    // A last page that is emptier than this is worth a little less white between rows.
    private const double FewRows = 0.4;
    private const int MostPulledIn = 16;
    private const int LeastBody = 100_000;

    private static readonly double[] Tightness = [0.88, 0.76, 0.64, 0.52];

    private readonly KnownPictures known = new();

    private readonly record struct Attempt(Orientation Orientation, bool IsStepDown, bool MaySplit)
    {
        public double Tightness { get; init; } = 1;
    }

    public List<Page> LayOut(Dictionary<Scene, SetPicture> pictures)
    {
        var tried = new Trial([], 1, true, new Faults(), pictures);
        var attempt = default(Attempt);
        foreach (var next in Attempts())
        {
            attempt = next;
            tried = Try(next);
            if (!tried.IsTooNarrow)
            {
                break;
            }
        }

        tried = PullIn(tried, attempt);
        faults.AddRange(tried.Faults.All);
        foreach (var (scene, picture) in tried.Pictures)
        {
            pictures[scene] = picture;
        }

        return tried.Pages;
    }

    private IEnumerable<Attempt> Attempts()
    {
        var setup = sheet.Setup.Orientation;
        yield return new Attempt(setup, IsStepDown: false, MaySplit: false);
        if (setup == Orientation.Portrait)
        {
            yield return new Attempt(Orientation.Landscape, IsStepDown: false, MaySplit: false);
        }

        yield return new Attempt(Orientation.Landscape, IsStepDown: true, MaySplit: false);
        yield return new Attempt(setup, IsStepDown: false, MaySplit: true);
    }

    /// <summary>A few rows on a last page of their own are pulled in where a little less white makes room for them.</summary>
    private Trial PullIn(Trial usual, Attempt attempt)
    {
        if (usual.Pages.Count is < 2 or > MostPulledIn || Filled(usual.Pages[^1]) > FewRows && usual.LastFilled > FewRows)
        {
            return usual;
        }

        foreach (var tightness in Tightness)
        {
            var tighter = Try(attempt with { Tightness = tightness });
            if (tighter.Pages.Count < usual.Pages.Count)
            {
                return tighter;
            }
        }

        return usual;
    }

    private static double Filled(Page page)
    {
        if (page.Strips.Count == 0)
        {
            return 0;
        }

        var last = page.Strips[^1];
        var top = PaperFrame.Top + page.Furniture.HeadHeight;
        var bottom = page.Frame.InnerBottom - page.Furniture.FootHeight;
        return (last.Y + last.Strip.Height - top) / (double)Math.Max(1, bottom - top);
    }

    private Trial Try(Attempt attempt)
    {
        var own = new Faults { Sheet = sheet.Id };
        var frame = PaperFrame.Of(sheet.Setup.Size, attempt.Orientation);
        var scale = TypeScale.For(sheet.Setup.Class, attempt.IsStepDown, attempt.Tightness);
        var composer = new Composer(shaper, scale, targets);
        var pictures = new PictureSetter(composer, own, $"{words.At} {sheet.Setup.Size}", known);
        var furniture = new Furniture(sheet, frame.InnerWidth, composer, words);
        var bodyTop = PaperFrame.Top + furniture.HeadHeight;
        var height = frame.InnerBottom - furniture.FootHeight - bodyTop;
        if (height < LeastBody)
        {
            own.Add(FaultKind.HeadTooTall, "The head leaves no room on the page for anything else.");
            height = LeastBody;
        }

        var room = new Room(composer, own, words, height, attempt.MaySplit) { Pictures = pictures };
        var strips = StripCutter.Cut(new BlockSetter(room).Set(sheet.Blocks, frame.InnerWidth), room);
        var ranges = Paging.Pages(strips, height);
        var pages = ranges.ConvertAll(r => new Page(sheet, frame, Placed(r, bodyTop), furniture));
        if (pages.Count == 0)
        {
            pages.Add(new Page(sheet, frame, [], furniture));
        }

        pages[0] = pages[0] with { IsFirst = true };
        return new Trial(pages, Paging.LastFilled(strips, height), room.IsTooNarrow, own, pictures.Done);
    }

    private static List<PlacedStrip> Placed(PageRange range, int top)
    {
        var placed = new List<PlacedStrip>();
        var y = top;
        foreach (var head in range.All[range.Start].Heads)
        {
            placed.Add(new PlacedStrip(head, y, IsRepeated: true));
            y += head.Height;
        }

        for (var i = range.Start; i < range.Start + range.Count; i++)
        {
            y += i == range.Start ? 0 : range.All[i].Gap;
            placed.Add(new PlacedStrip(range.All[i], y, IsRepeated: false));
            y += range.All[i].Height;
        }

        return placed;
    }

    private sealed record Trial(List<Page> Pages, double LastFilled, bool IsTooNarrow, Faults Faults, Dictionary<Scene, SetPicture> Pictures);
}
