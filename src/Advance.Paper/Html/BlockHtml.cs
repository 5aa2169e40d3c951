using Advance.Paper.Layout;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;

namespace Advance.Paper.Html;

/// <summary>Writes blocks.</summary>
internal sealed class BlockHtml(Markup page, DocumentLayout laid, InlineHtml inlines, Wording words)
{
    private const int Deepest = 12;

    private List<int> levels = [];

    /// <summary>Writes the blocks of a sheet.</summary>
    public void Write(IReadOnlyList<Block> blocks)
    {
        levels = [.. blocks.SelectMany(Headings).Distinct().Order()];
        Write(blocks, 0);
    }

    private static IEnumerable<int> Headings(Block block) => block switch
    {
        Heading heading => [heading.Level],
        Columns columns => columns.Parts.SelectMany(part => part.Blocks).SelectMany(Headings),
        KeepTogether kept => kept.Blocks.SelectMany(Headings),
        _ => [],
    };

    private void Write(IReadOnlyList<Block> blocks, int depth)
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
                // Under the title of the sheet no level is left out, whatever a template begins with.
                Around($"h{levels.IndexOf(heading.Level) + 2}", id, null, heading.Text);
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
                Aside(id, block is Remark { Weight: RemarkWeight.Note } ? "note" : null, WarningSetter.Inlines(block, words));
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

    // On the page a caution belongs to its sheet; it is no part of the page of its own.
    private void Aside(string? id, string? kind, IReadOnlyList<Inline> text)
    {
        page.Open("aside", ("id", id), ("class", kind), ("role", "note"));
        inlines.Write(text);
        page.Close("aside");
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
