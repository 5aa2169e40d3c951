using Advance.Paper.Layout;
using Advance.Paper.Setting;

namespace Advance.Paper.Pictures.Placing;

/// <summary>Sets text that has a fixed place in a picture.</summary>
internal static class LetteringMarks
{
    public static IEnumerable<Mark> Of(Lettering lettering, Frame frame, Composer composer)
    {
        var style = Style(lettering, composer);
        var words = Spread(lettering, style, composer, out var width);
        if (words.Length == 0)
        {
            yield break;
        }

        var (x, y) = frame.Mils(lettering.At);
        var (left, down) = Shift(lettering.Anchor, width, style.Cap);
        var (sin, cos) = Math.SinCos(lettering.Turn * Math.PI / 180);
        yield return new RunMark(x + (int)((left * cos) - (down * sin)), y + (int)((left * sin) + (down * cos)), style, words, width)
        {
            Turn = lettering.Turn,
        };
    }

    /// <summary>What it covers, in 0.1 mm of the paper; the box around it when it is turned.</summary>
    public static Box Box(Lettering lettering, Frame frame, Composer composer)
    {
        var style = Style(lettering, composer);
        _ = Spread(lettering, style, composer, out var width);
        var (left, down) = Shift(lettering.Anchor, width, style.Cap);
        var (x, y) = frame.Tenths(lettering.At);
        return Turned(x, y, left, down - style.Cap, width, style.Cap, lettering.Turn);
    }

    /// <summary>The box around a rectangle that is turned about a point.</summary>
    public static Box Turned(int x, int y, int left, int top, int width, int height, double turn)
    {
        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        var box = Placing.Box.Nothing;
        foreach (var (px, py) in new[] { (left, top), (left + width, top), (left, top + height), (left + width, top + height) })
        {
            box = box.With(x + Frame.Tenths(Mil.ToMm((int)((px * cos) - (py * sin)))), y + Frame.Tenths(Mil.ToMm((int)((px * sin) + (py * cos)))));
        }

        return box;
    }

    private static TypeStyle Style(Lettering lettering, Composer composer)
    {
        var style = composer.Scale.Style(lettering.Style, composer.Body);
        if (lettering.HeightMm is { } mm && double.IsFinite(mm))
        {
            style = style with { Size = Math.Max(1000, (int)(Mil.FromMm(Math.Clamp(mm, 0.5, 200)) / BuiltIn.CapHeight)) };
        }

        return lettering.White ? style with { Shade = Shade.White } : style;
    }

    private static PlacedWord[] Spread(Lettering lettering, TypeStyle style, Composer composer, out int width)
    {
        var text = composer.Compose(lettering.Text, style);
        var room = (int)(style.Size * Math.Clamp(lettering.Spread, 0, 3));
        return text.OnOneLine(room, out width);
    }

    private static (int X, int Y) Shift(Anchor anchor, int width, int cap) => anchor switch
    {
        Anchor.Left => (0, cap / 2),
        Anchor.Right => (-width, cap / 2),
        Anchor.Top => (-width / 2, cap),
        Anchor.Bottom => (-width / 2, 0),
        _ => (-width / 2, cap / 2),
    };
}
