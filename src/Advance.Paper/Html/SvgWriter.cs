using System.Text;
using Advance.Paper.Layout;
using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;

namespace Advance.Paper.Html;

/// <summary>Writes a picture, laid out for the paper, as SVG: the same marks at the same places as in the PDF, in points.</summary>
internal sealed class SvgWriter
{
    private readonly Markup page;
    private readonly DocumentLayout laid;

    private SvgWriter(Markup page, DocumentLayout laid)
    {
        this.page = page;
        this.laid = laid;
    }

    public static void Write(Markup page, SetPicture picture, DocumentLayout laid)
    {
        string width = Pt(picture.Width), height = Pt(picture.Height);
        page.Open("svg", ("viewBox", $"0 0 {width} {height}"), ("width", $"{width}pt"), ("role", "img"), ("aria-label", picture.Title));
        // Each picture has its own pattern: an id in another one would be lost when that one is not shown.
        page.Raw("<defs><pattern id=\"hatch\" width=\"3.2\" height=\"3.2\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\">"
            + "<path d=\"M0 0V3.2\" stroke=\"#b4b4b4\" stroke-width=\".9\"/></pattern></defs>\n");
        var writer = new SvgWriter(page, laid);
        var layer = "";
        foreach (var mark in picture.Marks)
        {
            if (mark.Layer != layer)
            {
                if (layer.Length > 0)
                {
                    page.Close("g");
                }

                layer = mark.Layer;
                if (layer.Length > 0)
                {
                    page.Open("g", ("class", layer));
                }
            }

            writer.Write(mark);
        }

        if (layer.Length > 0)
        {
            page.Close("g");
        }

        page.Close("svg");
    }

    private void Write(Mark mark)
    {
        switch (mark)
        {
            case RunMark run:
                WriteRun(run);
                break;
            case PathMark path:
                WritePath(path);
                break;
            case BoxMark box:
                WriteBox(box);
                break;
            case StrokeMark line:
                page.Void("path", ("d", $"M{Pt(line.X1)} {Pt(line.Y1)}L{Pt(line.X2)} {Pt(line.Y2)}"), ("stroke", Colour(line.Shade)), ("stroke-width", Pt(line.Weight)));
                break;
        }
    }

    // Each word stands where it was laid, so that a browser's own spacing moves nothing; single letters are one word set wide.
    private void WriteRun(RunMark run)
    {
        var isSpread = run.Words.Length > 1 && Array.TrueForAll(run.Words, word => word.Word.Text.Length == 1);
        page.Open(
            "text",
            ("y", Pt(run.Baseline)),
            ("font-size", Pt(run.Style.Size)),
            ("font-weight", run.Style.IsStrong ? "700" : null),
            ("fill", Colour(run.Style.Shade)),
            ("transform", run.Turn == 0 ? null : $"rotate({Markup.Number(run.Turn)} {Pt(run.X)} {Pt(run.Baseline)})"));
        for (var i = 0; i < run.Words.Length; i++)
        {
            page.Text(i > 0 && !isSpread ? " " : "").Element("tspan", run.Words[i].Word.Text, ("x", Pt(run.X + run.Words[i].X)));
        }

        page.Close("text");
    }

    private void WriteBox(BoxMark box) => page.Void(
        "rect",
        ("x", Pt(box.X + (box.Outline / 2))),
        ("y", Pt(box.Y + (box.Outline / 2))),
        ("width", Pt(box.Width - box.Outline)),
        ("height", Pt(box.Height - box.Outline)),
        ("rx", box.Radius > 0 ? Pt(box.Radius) : null),
        ("fill", box.IsHatched ? "url(#hatch)" : box.Fill is { } fill ? Colour(fill) : "none"),
        ("stroke", box.Outline > 0 ? Colour(Shade.Ink) : null),
        ("stroke-width", box.Outline > 0 ? Pt(box.Outline) : null));

    private void WritePath(PathMark path)
    {
        var d = new StringBuilder();
        foreach (var step in path.Steps)
        {
            d.Append(step.Kind switch
            {
                PathStepKind.Move => $"M{Pt(step.X)} {Pt(step.Y)}",
                PathStepKind.Line => $"L{Pt(step.X)} {Pt(step.Y)}",
                PathStepKind.Curve => $"C{Pt(step.X1)} {Pt(step.Y1)} {Pt(step.X2)} {Pt(step.Y2)} {Pt(step.X)} {Pt(step.Y)}",
                _ => "Z",
            });
        }

        page.Void(
            "path",
            ("d", d.ToString()),
            ("fill", path.Fill switch { Fill.White => "#fff", Fill.Black => Colour(Shade.Ink), Fill.Grey => Colour(Shade.Pale), Fill.Hatch => "url(#hatch)", _ => "none" }),
            ("stroke", path.Weight > 0 ? Colour(path.Shade) : null),
            ("stroke-width", path.Weight > 0 ? Pt(path.Weight) : null),
            ("stroke-dasharray", Dashes.Of(path.Dash, Mil.ToPt(path.Weight)) is { } dash ? string.Join(' ', dash.Select(v => Markup.Number(v))) : null));
    }

    private static string Pt(int mil) => Markup.Number(Math.Round(mil / 1000.0, 2, MidpointRounding.AwayFromZero));

    private static string Colour(Shade shade) => $"#{Grey.Of(shade):x6}";
}
