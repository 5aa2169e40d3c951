using Advance.Paper;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Sheets.Markup;
using Advance.Sheets.Markup.Subset;
using Advance.Sheets.Templating;
using Cell = Advance.Sheets.Views.Cell;
using Sheet = Advance.Paper.Tree.Sheet;

namespace Advance.Sheets;

/// <summary>
/// Prints the examples of the markup for nobody. The libraries of templates, fonts, pages and workbooks are slow to wake up, and the first thing
/// that is printed waits for them; run beside the planning, a rehearsal takes that wait away. Nothing of it is kept: what it leaves
/// behind is code that has run, and the built-in fonts, which are opened once whoever asks first.
/// </summary>
internal static class Rehearsal
{
    private const string Template = "rehearsal.html";

    private static readonly string Text =
        $$$"""
        <section class="sheet" id="rehearsal" title="Rehearsal" data-for="nobody" data-readers="all" data-workbook="rehearsal">
        {{ for row in rows }}{{ if row }}<p>{{ row }} {{ for.index + 1 }}</p>{{ end }}{{ end }}
        {{{string.Concat(Forms.All.Where(form => form.Is.HasFlag(Content.Block)).Select(form => form.Example))}}}
        </section>
        """;

    /// <summary>Rehearses.</summary>
    /// <param name="request">Which formats.</param>
    /// <returns>What came out, for whoever wants to see that it went well.</returns>
    public static Printing Run(PackageRequest request)
    {
        var library = TemplateLibrary.Shipped.With(new Dictionary<string, string>(StringComparer.Ordinal) { [Template] = Text });
        var rows = new View([Cell.Of("DSR"), Cell.Number(32, "32 A", "A"), Cell.Of("PD1") with { Tbc = "venue", Verdict = Verdict.Fails }]);
        var read = SheetReader.Read(new TemplateEngine(library).Render(Template, rows), [new Drawing("example", [], _ => Scene)]);
        var sheets = read.Sheets.Select(sheet => new Sheet(sheet.Id, sheet.Title, sheet.Setup(PageSize.A4), new SheetHead(sheet.Title), new SheetFoot([], []), sheet.Blocks));
        return Printer.Print(new Document(new DocumentInfo("Rehearsal"), [.. sheets]), PackageBuilder.Options(request, CompanyFolder.None) with
        {
            Workbook = request.Formats.Contains("xlsx"),
        });
    }

    private static Scene Scene { get; } = new(
        "Example",
        [
            new Layer("all",
            [
                new Rectangle(new Point(0, 0), 4000, 3000),
                new Symbol("M1", [new Circle(new Point(2000, 1000), 300)]) { Label = new Label([new LabelLine("M1")]) },
            ]),
        ]);

    private sealed record View(IReadOnlyList<Cell> Rows);
}
