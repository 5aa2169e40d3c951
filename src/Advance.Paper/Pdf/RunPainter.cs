using Advance.Paper.Layout;
using Advance.Paper.Setting;
using SkiaSharp;

namespace Advance.Paper.Pdf;

/// <summary>
/// Paints runs of words. Glyphs go in with their text and clusters: without them, a figure whose glyph is not that of the plain digit
/// would be lost when text is copied from the PDF.
/// </summary>
internal sealed class RunPainter(Inks inks) : IDisposable
{
    private readonly SKTextBlobBuilder builder = new();
    private readonly List<ushort> glyphs = [];
    private readonly List<SKPoint> positions = [];
    private readonly List<uint> clusters = [];
    private readonly List<byte> text = [];

    public void Paint(SKCanvas canvas, RunMark run, int x, int y)
    {
        var isTurned = run.Turn != 0;
        if (isTurned)
        {
            canvas.Save();
            canvas.RotateDegrees((float)run.Turn, Mil.ToPt(run.X + x), Mil.ToPt(run.Baseline + y));
        }

        Face? face = null;
        foreach (var word in run.Words)
        {
            // A turned order of words keeps its spaces to itself: they are written with the word that follows.
            var at = word.X;
            foreach (var part in word.Word.Runs)
            {
                if (!ReferenceEquals(face, part.Face))
                {
                    Flush(canvas, face, run, x, y);
                }

                face = part.Face;
                if (word.AfterSpace && at == word.X && glyphs.Count > 0)
                {
                    AddSpace(part.Face, at, run.Style.Size);
                }

                Add(word.Word, part, at, run.Style.Size);
                at += part.Width(run.Style.Size);
            }
        }

        Flush(canvas, face, run, x, y);
        if (isTurned)
        {
            canvas.Restore();
        }
    }

    public void Dispose() => builder.Dispose();

    private void AddSpace(Face face, int end, int size)
    {
        glyphs.Add(face.SpaceGlyph);
        positions.Add(new SKPoint((end - ((float)face.Space * size / face.UnitsPerEm)) / 1000f, 0));
        clusters.Add((uint)text.Count);
        text.Add((byte)' ');
    }

    private void Add(ShapedWord word, ShapedRun run, int at, int size)
    {
        var start = (uint)text.Count;
        var scale = size / (1000f * run.Face.UnitsPerEm);
        var units = 0;
        // A word in several fonts is written in several runs, each with its own part of the text.
        var (from, to) = word.Runs.Length == 1 ? (0, word.Utf8.Length) : Range(word, run);
        for (var i = 0; i < run.Glyphs.Length; i++)
        {
            glyphs.Add(run.Glyphs[i]);
            var dx = run.OffsetsX is { } ox ? ox[i] : 0;
            var dy = run.OffsetsY is { } oy ? oy[i] : 0;
            positions.Add(new SKPoint((at / 1000f) + ((units + dx) * scale), -dy * scale));
            clusters.Add(start + run.Clusters[i] - (uint)from);
            units += run.Advances[i];
        }

        text.AddRange(word.Utf8.AsSpan(from, to - from));
    }

    private static (int From, int To) Range(ShapedWord word, ShapedRun run)
    {
        var from = (int)run.Clusters.Min();
        var to = word.Utf8.Length;
        foreach (var other in word.Runs)
        {
            if (other.Clusters.Length > 0 && other.Clusters.Min() > from)
            {
                to = Math.Min(to, (int)other.Clusters.Min());
            }
        }

        return (from, to);
    }

    private void Flush(SKCanvas canvas, Face? face, RunMark run, int x, int y)
    {
        if (glyphs.Count == 0 || face is null)
        {
            return;
        }

        var font = inks.Font(face, run.Style.Size);
        var buffer = builder.AllocatePositionedTextRun(font, glyphs.Count, text.Count, null);
        System.Runtime.InteropServices.CollectionsMarshal.AsSpan(glyphs).CopyTo(buffer.Glyphs);
        System.Runtime.InteropServices.CollectionsMarshal.AsSpan(positions).CopyTo(buffer.Positions);
        System.Runtime.InteropServices.CollectionsMarshal.AsSpan(clusters).CopyTo(buffer.Clusters);
        System.Runtime.InteropServices.CollectionsMarshal.AsSpan(text).CopyTo(buffer.Text);
        using var blob = builder.Build();
        canvas.DrawText(blob, Mil.ToPt(run.X + x), Mil.ToPt(run.Baseline + y), inks.Fill(run.Style.Shade));
        glyphs.Clear();
        positions.Clear();
        clusters.Clear();
        text.Clear();
    }
}
