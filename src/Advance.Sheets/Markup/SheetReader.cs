using Advance.Paper.Tree;
using Advance.Sheets.Markup.Building;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Templating;

namespace Advance.Sheets.Markup;

/// <summary>Reads what a template wrote into the tree that is printed.</summary>
public static class SheetReader
{
    /// <summary>
    /// Reads all sheets, and finds all that the subset does not allow in one run. Where the template was stopped before its end nothing is
    /// read, since half a sheet would only give faults that are none.
    /// </summary>
    /// <param name="rendered">What a template wrote.</param>
    /// <param name="drawings">All drawings there are.</param>
    public static SheetsRead Read(RenderedTemplate rendered, IReadOnlyList<Drawing> drawings)
    {
        if (!rendered.IsWhole)
        {
            return new([], rendered.Faults);
        }

        var faults = new MarkupFaults(rendered.Map);
        var blocks = new Blocks(drawings, faults);
        var sheets = new ElementReader(rendered.Text, faults).Read().Elements.Select(section => Make(section, blocks)).ToList();
        if (sheets.Count == 0)
        {
            faults.Add(0, "There is no sheet in this template.", "Write `<section class=\"sheet\" …>`.");
        }

        return new(sheets, [.. rendered.Faults, .. faults.All]);
    }

    private static MarkedUpSheet Make(Element section, Blocks blocks) => new(
        section.Id ?? "",
        section.Text("title") ?? "",
        section.Text("data-for") ?? "",
        section.Text("data-readers")?.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [],
        blocks.In(section))
    {
        Workbook = section.Text("data-workbook"),
        Class = (TypeClass)(section.Word("data-type") ?? 0),
        Paper = (PageSize?)section.Word("data-paper"),
        Orientation = (Orientation)(section.Word("data-orientation") ?? 0),
    };
}
