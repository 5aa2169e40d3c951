using Advance.Paper.Tree;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;

namespace Advance.Sheets.Markup.Building;

/// <summary>Builds the blocks of a sheet.</summary>
internal sealed class Blocks(IReadOnlyList<Drawing> drawings, MarkupFaults faults)
{
    private readonly Figures figures = new(drawings, faults);
    private readonly Tables tables = new(faults);

    /// <summary>All blocks in an element. One that cannot be built is a fault and left out.</summary>
    public IReadOnlyList<Block> In(Element holder) => [.. holder.Elements.Select(Of).OfType<Block>()];

    private Block? Of(Element element)
    {
        var block = Make(element);
        return block is null ? null : block with { Id = element.Id };
    }

    private Block? Make(Element element) => element.Form switch
    {
        { Name: "h1" or "h2" or "h3" } => new Heading(element.Form.Name[1] - '0', Line.Of(element, faults)),
        { Name: "p", Class: "poster" } => new Poster(Line.TextOf(element), element.Number("data-mm") ?? 0),
        { Name: "p" } => new Paragraph(Line.Of(element, faults)) { Align = (Align)(element.Word("data-align") ?? 0) },
        { Name: "ul" or "ol" } => new ItemList([.. element.Elements.Select(item => Line.Of(item, faults))], element.Form.Name == "ol"),
        { Name: "dl" } => MakePairs(element),
        { Name: "hr", Class: "page-break" } => new PageBreak(),
        { Name: "hr" } => new Rule(),
        { Name: "div", Class: "columns" } => MakeColumns(element),
        { Name: "div", Class: "keep" } => new KeepTogether(In(element)),
        { Name: "div", Class: "space" } => new Space(element.Number("data-mm") ?? 0),
        { Name: "div" } => MakeAlongside(element),
        { Name: "aside" } => Asides.Make(element, faults),
        { Name: "figure" } => figures.Make(element),
        { Name: "table" } => tables.Make(element),
        var form => throw new InvalidOperationException($"No block is made of {form.Title}."),
    };

    private Pairs MakePairs(Element element)
    {
        var items = new List<Pair>();
        Element? name = null;
        foreach (var part in element.Elements)
        {
            if ((part.Form.Name == "dt") == (name is not null))
            {
                faults.Add(part.At, name is null ? "A `dd` needs a `dt` before it." : "A `dt` needs a `dd` before the next.");
            }

            if (part.Form.Name == "dd" && name is not null)
            {
                var text = Line.OfField(part, faults);
                items.Add(new Pair(Line.Of(name, faults), text.Pieces) { Verdict = text.Verdict });
            }

            name = part.Form.Name == "dt" ? part : null;
        }

        if (name is not null)
        {
            faults.Add(name.At, "A `dt` needs a `dd` after it.");
        }

        return new(items) { Columns = (int)(element.Number("data-columns") ?? 1) };
    }

    private Columns? MakeColumns(Element element)
    {
        var parts = element.Elements.Select(part => new ColumnsPart(part.Number("data-share") ?? 1, In(part))).ToList();
        if (parts.Count == 0)
        {
            faults.Add(element.At, "Columns need at least one `div` in them.");
            return null;
        }

        return new(parts);
    }

    private Alongside? MakeAlongside(Element element)
    {
        if (element.Elements.ToList() is not [{ Form.Name: "figure" } picture, { Form.Name: "table" } rows])
        {
            faults.Add(element.At, "A picture alongside needs one `figure`, and then one `table`.");
            return null;
        }

        if (picture.First("figcaption") is { } caption)
        {
            faults.Add(caption.At, "A picture alongside has no caption: the table's stands over both.");
        }

        var (table, bands) = tables.MakeLevel(rows);
        return figures.Draw(picture) is { } scene && table is not null
            ? new(scene, bands, table) { PictureShare = element.Number("data-share") ?? 0.38 }
            : null;
    }
}
