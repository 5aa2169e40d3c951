using Advance.Paper.Tree;

namespace Advance.Paper.Setting;

/// <summary>Turns inlines into atoms: cuts text into words and knows where a line may end.</summary>
internal sealed class Composer(Shaper shaper, TypeScale scale, Targets targets)
{
    private const int DeepestLink = 8;

    private readonly List<Atom> atoms = [];
    private Gap gap;

    private enum Gap
    {
        None,
        Hyphen,
        Soft,
        Space,
        HardSpace,
        NewLine,
    }

    public TypeScale Scale => scale;

    public TypeStyle Body { get; } = new(scale.Body, IsStrong: false, Shade.Ink);

    public TypeStyle Quiet { get; } = new(scale.Small, IsStrong: false, Shade.Soft);

    /// <summary>Composes a text.</summary>
    /// <param name="inlines">What it is made of.</param>
    /// <param name="around">How normal text in it is set.</param>
    public SetText Compose(IReadOnlyList<Inline> inlines, TypeStyle around)
    {
        if (inlines.Count == 0)
        {
            return SetText.Empty;
        }

        atoms.Clear();
        gap = Gap.None;
        foreach (var inline in inlines)
        {
            Add(inline, around, link: null, depth: 0);
        }

        return atoms.Count == 0 ? SetText.Empty : new SetText([.. atoms], shaper);
    }

    /// <summary>Composes plain text in one style.</summary>
    public SetText Compose(string text, TypeStyle style) => Compose([new Text(text)], style);

    private void Add(Inline inline, TypeStyle around, string? link, int depth)
    {
        switch (inline)
        {
            case Text text:
                AddWords(text.Value, scale.Style(text.Style, around), link, isWhole: false);
                break;
            case Datum datum:
                AddWords(datum.Shown, scale.Style(datum.Style, around), link, isWhole: true);
                break;
            case LineBreak:
                gap = Gap.NewLine;
                break;
            case Link to when depth < DeepestLink:
                var target = targets.Accept(to.Target) ?? link;
                foreach (var inner in to.Text)
                {
                    Add(inner, around, target, depth + 1);
                }

                break;
            case Tag tag:
                AddTag(tag, around);
                break;
            case PageOf page:
                AddPage(page, scale.Style(page.Style, around));
                break;
            default:
                AddShape(inline, around, link);
                break;
        }
    }

    private void AddShape(Inline inline, TypeStyle around, string? link)
    {
        switch (inline)
        {
            case TickBox tick:
                AddBox(new AtomBox.Tick(), around, (int)(around.Size * 1.05), link);
                if (tick.Label.Length > 0)
                {
                    gap = Gap.HardSpace;
                    AddWords(tick.Label, around, link, isWhole: true);
                }

                break;
            case WriteIn write:
                AddBox(new AtomBox.Write(), around, Mil.FromMm(Math.Clamp(Finite(write.LeastMm), 1, 300)), link);
                break;
            case Bar bar:
                gap = Gap.NewLine;
                AddBox(new AtomBox.Gauge(Math.Max(0, Finite(bar.Share)), bar.Policy), around, Mil.FromMm(13), link);
                gap = Gap.NewLine;
                break;
        }
    }

    private static double Finite(double value) => double.IsFinite(value) ? value : 0;

    private void AddTag(Tag tag, TypeStyle around)
    {
        var style = new TypeStyle(Math.Max(scale.Least, (int)(Math.Min(scale.Small, around.Size) * 0.9)), IsStrong: true, Shade.Ink);
        var words = new List<ShapedWord>();
        var width = 0;
        foreach (var range in Words.Split(tag.Text))
        {
            var word = shaper.Shape(range.Of(tag.Text), style.IsStrong);
            width += word.Width(style.Size) + (words.Count > 0 ? shaper.Space(style) : 0);
            words.Add(word);
        }

        var before = atoms.Count;
        AddBox(new AtomBox.Outlined([.. words]), style, width + style.Size, link: null);
        if (atoms[before].Space > 0)
        {
            atoms[before] = atoms[before] with { Space = shaper.Space(around) };
        }
    }

    private void AddPage(PageOf page, TypeStyle style)
    {
        var link = targets.Find(page.Target) is null ? null : "#" + page.Target;
        var isKnown = targets.Pages.TryGetValue(page.Target, out var number);
        var digits = shaper.Shape(link is null ? "?" : isKnown ? $"{number}" : "00", style.IsStrong);
        if (link is null || isKnown)
        {
            AddAtom(new Atom(digits, null, style, digits.Width(style.Size), 0, LineStart.Never, link));
        }
        else
        {
            AddBox(new AtomBox.Page(page.Target), style, digits.Width(style.Size), link);
        }
    }

    private void AddBox(AtomBox box, TypeStyle style, int width, string? link)
    {
        if (gap == Gap.None && atoms.Count > 0)
        {
            gap = Gap.Soft;
        }

        AddAtom(new Atom(null, box, style, width, 0, LineStart.Never, link));
    }

    private void AddWords(string text, TypeStyle style, string? link, bool isWhole)
    {
        foreach (var range in Words.Split(text))
        {
            if (range.Before is Words.Gap.Space)
            {
                gap = Merge(isWhole ? Gap.HardSpace : Gap.Space);
            }
            else if (range.Before is Words.Gap.HardSpace)
            {
                gap = Merge(Gap.HardSpace);
            }
            else if (range.Before is Words.Gap.Hyphen && !isWhole)
            {
                gap = Merge(Gap.Hyphen);
            }
            else if (range.Before is Words.Gap.Soft && !isWhole)
            {
                gap = Merge(Gap.Soft);
            }

            if (range.Length == 0)
            {
                continue;
            }

            var word = shaper.Shape(range.Of(text), style.IsStrong);
            AddAtom(new Atom(word, null, style, word.Width(style.Size), 0, LineStart.Never, link));
        }
    }

    private Gap Merge(Gap next) => gap > next ? gap : next;

    private void AddAtom(Atom atom)
    {
        var first = atoms.Count == 0;
        atoms.Add(atom with
        {
            Space = !first && gap is Gap.Space or Gap.HardSpace ? shaper.Space(atom.Style) : 0,
            Break = gap switch
            {
                _ when first => LineStart.Never,
                Gap.NewLine => LineStart.Always,
                Gap.Space or Gap.Soft => LineStart.Allowed,
                Gap.Hyphen => LineStart.InWord,
                _ => LineStart.Never,
            },
        });
        gap = Gap.None;
    }
}
