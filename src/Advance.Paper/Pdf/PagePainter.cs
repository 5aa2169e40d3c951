using Advance.Paper.Layout;
using Advance.Paper.Pictures;
using Advance.Paper.Setting;
using SkiaSharp;

namespace Advance.Paper.Pdf;

/// <summary>Paints marks on a page.</summary>
/// <param name="canvas">The page.</param>
/// <param name="inks">Paints and fonts of the document.</param>
/// <param name="runs">Paints words.</param>
/// <param name="laid">Knows on which page things are.</param>
/// <param name="named">Names that have been painted; of two places with one name only the first gets it.</param>
internal sealed class PagePainter(SKCanvas canvas, Inks inks, RunPainter runs, DocumentLayout laid, HashSet<string> named)
{
    private const float HatchStep = 3.2f;

    public void Paint(IReadOnlyList<Mark> marks, int x, int y)
    {
        foreach (var mark in marks)
        {
            Paint(mark, x, y);
        }
    }

    private void Paint(Mark mark, int x, int y)
    {
        switch (mark)
        {
            case RunMark run:
                runs.Paint(canvas, run, x, y);
                break;
            case StrokeMark line:
                canvas.DrawLine(
                    Mil.ToPt(line.X1 + x), Mil.ToPt(line.Y1 + y), Mil.ToPt(line.X2 + x), Mil.ToPt(line.Y2 + y), inks.Stroke(line.Shade, line.Weight));
                break;
            case BoxMark box:
                PaintBox(box, x, y);
                break;
            case PathMark path:
                PaintPath(path, x, y);
                break;
            case PictureMark picture:
                Paint(picture.Picture.Marks, x + picture.X, y + picture.Y);
                break;
            case PageMark page:
                Paint(Numbered(page), x, y);
                break;
            case LinkMark link:
                PaintLink(link, x, y);
                break;
            case AnchorMark anchor:
                PaintName(anchor.Id, x, y + anchor.Y);
                break;
        }
    }

    /// <summary>Makes a place that links and bookmarks lead to.</summary>
    public void PaintName(string id, int x, int y)
    {
        if (!named.Add(id))
        {
            return;
        }

        using var data = SKData.CreateCopy(System.Text.Encoding.ASCII.GetBytes(PdfNames.Of(id) + "\0"));
        canvas.DrawNamedDestinationAnnotation(new SKPoint(Mil.ToPt(x), Mil.ToPt(y - 6000)), data);
    }

    private void PaintBox(BoxMark box, int x, int y)
    {
        var rect = SKRect.Create(Mil.ToPt(box.X + x), Mil.ToPt(box.Y + y), Mil.ToPt(box.Width), Mil.ToPt(box.Height));
        var radius = Mil.ToPt(box.Radius);
        if (box.Fill is { } fill)
        {
            Round(rect, radius, inks.Fill(fill));
        }

        if (box.IsHatched)
        {
            Hatch(rect, c => c.ClipRect(rect));
        }

        if (box.Outline == 0)
        {
            return;
        }

        var half = Mil.ToPt(box.Outline) / 2;
        rect.Inflate(-half, -half);
        Round(rect, radius, inks.Stroke(Shade.Ink, box.Outline));
    }

    private void Round(SKRect rect, float radius, SKPaint paint)
    {
        if (radius > 0)
        {
            canvas.DrawRoundRect(rect, radius, radius, paint);
        }
        else
        {
            canvas.DrawRect(rect, paint);
        }
    }

    /// <summary>Slanting lines, laid from the page's corner so that neighbours go on in one another.</summary>
    private void Hatch(SKRect around, Action<SKCanvas> clip)
    {
        canvas.Save();
        clip(canvas);
        var paint = inks.Stroke(Shade.Hair, 450);
        var first = MathF.Floor((around.Left + around.Top) / HatchStep) * HatchStep;
        for (var at = first; at < around.Right + around.Bottom; at += HatchStep)
        {
            canvas.DrawLine(at - around.Top, around.Top, at - around.Bottom, around.Bottom, paint);
        }

        canvas.Restore();
    }

    private void PaintPath(PathMark mark, int x, int y)
    {
        using var path = Path(mark, x, y);
        switch (mark.Fill)
        {
            case Fill.White:
                canvas.DrawPath(path, inks.Fill(Shade.White));
                break;
            case Fill.Black:
                canvas.DrawPath(path, inks.Fill(Shade.Ink));
                break;
            case Fill.Grey:
                canvas.DrawPath(path, inks.Fill(Shade.Pale));
                break;
            case Fill.Hatch:
                Hatch(path.Bounds, c => c.ClipPath(path));
                break;
        }

        if (mark.Weight == 0)
        {
            return;
        }

        var paint = inks.Stroke(mark.Shade, mark.Weight);
        using var effect = Dashes.Of(mark.Dash, Mil.ToPt(mark.Weight)) is { } pattern ? SKPathEffect.CreateDash(pattern, 0) : null;
        paint.PathEffect = effect;
        canvas.DrawPath(path, paint);
        paint.PathEffect = null;
    }

    private static SKPath Path(PathMark mark, int x, int y)
    {
        using var path = new SKPathBuilder();
        foreach (var step in mark.Steps)
        {
            switch (step.Kind)
            {
                case PathStepKind.Move:
                    path.MoveTo(X(step.X), Y(step.Y));
                    break;
                case PathStepKind.Line:
                    path.LineTo(X(step.X), Y(step.Y));
                    break;
                case PathStepKind.Curve:
                    path.CubicTo(X(step.X1), Y(step.Y1), X(step.X2), Y(step.Y2), X(step.X), Y(step.Y));
                    break;
                default:
                    path.Close();
                    break;
            }
        }

        return path.Detach();

        float X(int value) => Mil.ToPt(value + x);

        float Y(int value) => Mil.ToPt(value + y);
    }

    private RunMark Numbered(PageMark page)
    {
        var number = laid.PageOf.TryGetValue(page.Target, out var found) ? $"{found}" : "?";
        var word = laid.NumberShaped(number, page.Style.IsStrong);
        return new RunMark(page.X, page.Baseline, page.Style, [new PlacedWord(word, 0, AfterSpace: false)], word.Width(page.Style.Size));
    }

    private void PaintLink(LinkMark link, int x, int y)
    {
        var rect = SKRect.Create(Mil.ToPt(link.X + x), Mil.ToPt(link.Y + y), Mil.ToPt(link.Width), Mil.ToPt(link.Height));
        var isInside = link.Target.StartsWith('#');
        var target = isInside ? PdfNames.Of(link.Target[1..]) : PdfNames.Url(link.Target);
        using var data = SKData.CreateCopy(System.Text.Encoding.ASCII.GetBytes(target + "\0"));
        if (isInside)
        {
            canvas.DrawLinkDestinationAnnotation(rect, data);
        }
        else
        {
            canvas.DrawUrlAnnotation(rect, data);
        }
    }
}
