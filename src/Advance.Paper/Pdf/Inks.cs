using Advance.Paper.Setting;
using SkiaSharp;

namespace Advance.Paper.Pdf;

/// <summary>The paints and fonts of one PDF, made when first used.</summary>
internal sealed class Inks(UsedGlyphs used) : IDisposable
{
    private readonly Dictionary<Face, SKTypeface> typefaces = [];
    private readonly Dictionary<(Face Face, int Size), SKFont> fonts = [];
    private readonly Dictionary<Shade, SKPaint> fills = [];
    private readonly SKPaint stroke = new() { IsStroke = true, IsAntialias = true };

    public SKFont Font(Face face, int size)
    {
        if (fonts.TryGetValue((face, size), out var font))
        {
            return font;
        }

        return fonts[(face, size)] = new SKFont(Typeface(face), Mil.ToPt(size))
        {
            Subpixel = true,
            LinearMetrics = true,
            BaselineSnap = false,
            Hinting = SKFontHinting.None,
        };
    }

    public SKPaint Fill(Shade shade)
    {
        if (fills.TryGetValue(shade, out var paint))
        {
            return paint;
        }

        return fills[shade] = new SKPaint { Color = new SKColor(0xFF000000 | (uint)Grey.Of(shade)), IsAntialias = true };
    }

    public SKPaint Stroke(Shade shade, int weight)
    {
        stroke.Color = new SKColor(0xFF000000 | (uint)Grey.Of(shade));
        stroke.StrokeWidth = Mil.ToPt(weight);
        stroke.PathEffect = null;
        return stroke;
    }

    public void Dispose()
    {
        foreach (var font in fonts.Values)
        {
            font.Dispose();
        }

        foreach (var paint in fills.Values)
        {
            paint.Dispose();
        }

        foreach (var typeface in typefaces.Values)
        {
            typeface.Dispose();
        }

        stroke.Dispose();
    }

    /// <summary>The font with no more than what is drawn: the library would put all of it into the PDF.</summary>
    private SKTypeface Typeface(Face face)
    {
        if (typefaces.TryGetValue(face, out var typeface))
        {
            return typeface;
        }

        using var data = SKData.CreateCopy(face.Trimmed(used.Of(face)));
        return typefaces[face] = SKTypeface.FromData(data);
    }
}
