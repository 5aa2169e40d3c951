using Advance.Paper.Layout;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;

namespace Advance.Paper.Html;

/// <summary>Writes blocks.</summary>
internal sealed class BlockHtml(Markup page, DocumentLayout laid, InlineHtml inlines, Wording words)
{
    private const int Deepest = 12;

    public void Write(IReadOnlyList<Block> blocks, int depth)
    {
        if (depth >= Deepest)
        {
            return;
        }

        foreach (var block in blocks)
        {
            Write(block, depth);
        }
    }

    private void Write(Block block, int depth)
    {
        var id = block.Id is { } given ? Markup.Id(given) : null;
        switch (block)
        {
            case Heading heading:
                Around($"h{Math.Clamp(heading.Level, 1, 3) + 1}", id, null, heading.Text);
                break;
            case Paragraph paragraph:
                Around("p", id, paragraph.Align switch { Align.Right => "right", Align.Centre => "centre", _ => null }, paragraph.Text);
                break;
            case ItemList list:
                WriteList(list, id);
                break;
            case Pairs pairs:
                WritePairs(pairs, id);
                break;
            case Table table:
                new TableHtml(page, inlines).Write(table);
                break;
            case Columns columns:
                WriteColumns(columns, id, depth);
                break;
            case KeepTogether kept:
                page.Open("div", ("class", "kept"), ("id", id));
                Write(kept.Blocks, depth + 1);
                page.Close("div");
                break;
            case Caution or Remark:
                Around("aside", id, block is Remark { Weight: RemarkWeight.Note } ? "note" : null, WarningSetter.Inlines(block, words));
                break;
            default:
                WriteRest(block, id);
                break;
        }
    }

    private void WriteRest(Block block, string? id)
    {
        switch (block)
        {
            case Picture picture:
                page.Open("figure", ("id", id));
                WriteScene(picture.Scene);
                if (picture.Caption.Count > 0)
                {
                    Around("figcaption", null, null, picture.Caption);
                }

                page.Close("figure");
                break;
            case Alongside alongside:
                page.Open("div", ("class", "alongside"), ("id", id)).Open("figure");
                WriteScene(alongside.Scene);
                page.Close("figure");
                new TableHtml(page, inlines).Write(alongside.Table);
                page.Close("div");
                break;
            case Poster poster:
                page.Element("p", poster.Text, ("class", "poster"), ("id", id), ("style", $"--cap:{Markup.Number(Math.Clamp(poster.MostMm, 1, 200))}mm"));
                break;
            case Rule:
                page.Void("hr", ("id", id));
                break;
        }
    }

    private void Around(string name, string? id, string? kind, IReadOnlyList<Inline> text)
    {
        page.Open(name, ("id", id), ("class", kind));
        inlines.Write(text);
        page.Close(name);
    }

    private void WriteList(ItemList list, string? id)
    {
        var name = list.Numbered ? "ol" : "ul";
        page.Open(name, ("id", id));
        foreach (var item in list.Items)
        {
            Around("li", null, null, item);
        }

        page.Close(name);
    }

    private void WritePairs(Pairs pairs, string? id)
    {
        page.Open("dl", ("id", id), ("class", $"in-{Math.Clamp(pairs.Columns, 1, 4)}"));
        foreach (var pair in pairs.Items)
        {
            page.Open("div");
            Around("dt", null, null, pair.Name);
            Around("dd", null, TableHtml.Class(pair.Verdict), pair.Text);
            page.Close("div");
        }

        page.Close("dl");
    }

    private void WriteColumns(Columns columns, string? id, int depth)
    {
        page.Open("div", ("class", "columns"), ("id", id));
        foreach (var part in columns.Parts)
        {
            page.Open("div", ("style", $"flex-grow:{Markup.Number(double.IsFinite(part.Share) && part.Share > 0 ? part.Share : 1)}"));
            Write(part.Blocks, depth + 1);
            page.Close("div");
        }

        page.Close("div");
    }

    private void WriteScene(Scene scene)
    {
        if (laid.Pictures.TryGetValue(scene, out var picture))
        {
            SvgWriter.Write(page, picture, laid);
        }
    }
}
