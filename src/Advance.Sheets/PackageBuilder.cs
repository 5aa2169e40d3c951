using System.Text;
using Advance.Paper;
using Advance.Planning;

namespace Advance.Sheets;

/// <summary>The door of this room: from the plan to files.</summary>
public static class PackageBuilder
{
    /// <summary>Wakes up what prints, beside whatever else is done; a package that is built after it or during it is the same, but sooner there.</summary>
    /// <param name="request">What will be asked for.</param>
    public static void WakeUp(PackageRequest request) => _ = Task.Run(() => Rehearsal.Run(request));

    /// <summary>Builds a package. The same plan and request give the same bytes.</summary>
    /// <param name="plan">The plan; all sheets are printed from it and from nothing else.</param>
    /// <param name="request">Which sheets, for whom, in which formats.</param>
    /// <param name="company">What the company puts in the place of what is shipped.</param>
    /// <returns>Files, or faults of templates and of the request and no files.</returns>
    public static Package Build(Plan plan, PackageRequest request, CompanyFolder company)
    {
        var composed = Composer.Compose(plan, request, company);
        if (composed.Faults.Count > 0)
        {
            return new Package([], composed.Titles, composed.Faults);
        }

        // What needs no layout is written beside the PDF, which takes longest.
        var books = new List<(string Name, Task<Printing> Printing)>();
        Task<byte[]>? json = null;
        var printing = Printer.Print(composed.Document, Options(request, company) with { WhenLaidOut = WriteTheRest });
        var files = new List<(string Name, ReadOnlyMemory<byte> Bytes)>();
        Add(files, "package.pdf", printing.Pdf);
        var faults = printing.Faults.ToList();
        foreach (var (name, book) in books)
        {
            Add(files, $"{name}.xlsx", book.GetAwaiter().GetResult().Workbook);
            faults.AddRange(book.Result.Faults);
        }

        Add(files, "package.html", printing.Html is { } html ? Encoding.UTF8.GetBytes(html) : null);
        Add(files, "plan.json", json?.GetAwaiter().GetResult());
        if (files.Count == 0)
        {
            return new Package([], composed.Titles, ["None of these sheets goes into a workbook. Ask for pdf, html or json, or for more sheets."]);
        }

        return new Package(files, composed.Titles, [.. faults.Select(fault => $"{fault.Sheet}: {fault.Text}")]);

        void WriteTheRest()
        {
            if (request.Formats.Contains("xlsx"))
            {
                books.AddRange(composed.Workbooks.Select(book => (book.Name, Task.Run(() => Printer.Print(book.Document, BookAlone)))));
            }

            json = request.Formats.Contains("json") ? Task.Run(() => PlanJson.Write(plan, composed.Views)) : null;
        }
    }

    private static PrintOptions BookAlone { get; } = new() { Pdf = false, Html = false };

    internal static PrintOptions Options(PackageRequest request, CompanyFolder company) => new()
    {
        Pdf = request.Formats.Contains("pdf"),
        Html = request.Formats.Contains("html"),
        Workbook = false,
        Fonts = [.. company.Fonts.Select(font => new FontFile(font.Name, font.Bytes))],
    };

    private static void Add(List<(string Name, ReadOnlyMemory<byte> Bytes)> files, string name, byte[]? bytes)
    {
        if (bytes is not null)
        {
            files.Add((name, bytes));
        }
    }
}
