using Advance.Paper.Tree;
using Advance.Planning;
using Advance.Sheets.Markup;
using Advance.Sheets.Templating;
using Advance.Sheets.Views;

namespace Advance.Sheets;

/// <summary>Puts a package together: from the plan to views, by templates to sheets, with a head and a foot each.</summary>
internal sealed class Composer
{
    private const string Everybody = "all";
    private const int MostNamed = 1;

    private readonly Plan plan;
    private readonly PackageRequest request;
    private readonly TemplateLibrary library;
    private readonly IReadOnlyList<Drawing> drawings;
    private readonly List<string> faults = [];
    private readonly HashSet<string> readers = new(StringComparer.Ordinal);
    private readonly List<string> ids = [];

    private Composer(Plan plan, PackageRequest request, CompanyFolder company)
    {
        this.plan = plan;
        this.request = request;
        library = TemplateLibrary.Shipped.With(company.Templates);
        drawings = DrawingList.Of(plan);
    }

    /// <summary>The sheets that were asked for, with the day sheet in front.</summary>
    public static Composition Compose(Plan plan, PackageRequest request, CompanyFolder company) =>
        new Composer(plan, request, company).Compose();

    private Composition Compose()
    {
        // An engine is for one thread: each has its own, and reads for itself the templates that it comes to need.
        using var engines = new ThreadLocal<TemplateEngine>(() => new TemplateEngine(library));
        var printed = PrintSideBySide(engines).Select(Take).ToList();
        var contents = printed.SelectMany(part => Contents(part.Sheets)).ToList();
        printed.Insert(0, Take(Print(engines, SheetList.DaySheet, DaySheetViews.Of(plan, contents, request.ShowsPrivate))));
        CheckRequest();

        var furniture = new Furniture(plan);
        var sheets = printed.SelectMany(part => part.Sheets).ToList();
        return new Composition(
            new Document(furniture.Info, [.. sheets.Select(furniture.Dress)]),
            [
                .. sheets.Where(sheet => sheet.Workbook is not null)
                    .GroupBy(sheet => sheet.Workbook!, StringComparer.Ordinal)
                    .Select(book => (book.Key, new Document(furniture.Info, [.. book.Select(furniture.Dress)]))),
            ],
            [.. printed.Where(part => part.Sheets.Count > 0).Select(part => (part.Template, part.View))],
            [.. sheets.Select(sheet => sheet.Title)],
            faults);
    }

    // Many sheets of one kind in a row are one line: from the first to the last.
    private static IEnumerable<DaySheetView.ContentsLine> Contents(IReadOnlyList<MarkedUpSheet> sheets) => sheets.Count > MostNamed
        ? [new DaySheetView.ContentsLine(sheets[0].Id, sheets[0].Title == sheets[^1].Title ? sheets[0].Title : $"{sheets[0].Title} to {sheets[^1].Title}", sheets[0].For)]
        : sheets.Select(sheet => new DaySheetView.ContentsLine(sheet.Id, sheet.Title, sheet.For));

    // Views, drawings and what is read are functions of the plan, which nobody changes; they stay in the order of the list.
    private IEnumerable<Printed> PrintSideBySide(ThreadLocal<TemplateEngine> engines)
    {
        var all = new Printed?[SheetList.Others.Count];
        Parallel.For(0, all.Length, index =>
        {
            var (template, view) = SheetList.Others[index];
            all[index] = view(plan) is { } made ? Print(engines, template, made) : null;
        });
        return all.OfType<Printed>();
    }

    private Printed Print(ThreadLocal<TemplateEngine> engines, string template, object view) =>
        new(template, view, SheetReader.Read(engines.Value!.Render($"sheets/{template}.html", view), drawings));

    private (string Template, object View, IReadOnlyList<MarkedUpSheet> Sheets) Take(Printed printed)
    {
        var (template, view, read) = printed;
        faults.AddRange(read.Faults.Select(fault => fault.ToString()));
        foreach (var sheet in read.Sheets)
        {
            readers.UnionWith(sheet.Readers);
            ids.Add(sheet.Id);
        }

        return (template, view, [.. read.Sheets.Where(IsWanted)]);
    }

    private bool IsWanted(MarkedUpSheet sheet) =>
        (request.Only.Count == 0 || request.Only.Any(wanted => Names(wanted, sheet.Id)))
        && (request.Reader is null or Everybody || sheet.Readers.Contains(request.Reader) || sheet.Readers.Contains(Everybody));

    // "stage-plot" names the plots of all acts.
    private static bool Names(string wanted, string id) => id == wanted || id.StartsWith(wanted + "-", StringComparison.Ordinal);

    private void CheckRequest()
    {
        foreach (var wanted in request.Only.Where(wanted => !ids.Exists(id => Names(wanted, id))))
        {
            faults.Add($"There is no sheet {wanted} in this gig. {NearestName.Cure(wanted, ids)}".TrimEnd());
        }

        if (request.Reader is { } reader && reader != Everybody && !readers.Contains(reader))
        {
            faults.Add($"There is no reader {reader}. {NearestName.Cure(reader, [.. readers.Order(StringComparer.Ordinal)])}".TrimEnd());
        }
    }

    private sealed record Printed(string Template, object View, SheetsRead Read);
}
