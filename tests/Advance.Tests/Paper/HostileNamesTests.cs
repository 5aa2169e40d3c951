using System.IO.Compression;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Advance.Paper;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using UglyToad.PdfPig;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper;

/// <summary>What somebody may call an act, put into every place that takes text: no writer takes it for more than text.</summary>
public sealed class HostileNamesTests
{
    private static readonly string[] Names =
    [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "</style></svg><b>",
        "&lt;b&gt; &amp; <!-- -->",
        "=HYPERLINK(\"http://evil.example\",\"x\")",
        "+1+1",
        "-2",
        "@SUM(A1)",
        "'quoted",
        ") Tj ET /Evil <</S /JavaScript>> (",
        "a\u0000b\u0007\u001Bc\uFFFE",
        "\uD800 alone \uDC00",
        "\u202Ereversed",
        "]]>",
        "${{7*7}} {{ 7 }}",
        "&A&P&\"Courier\"",
    ];

    public static TheoryData<string> Hostile => [.. Names];

    [Theory]
    [MemberData(nameof(Hostile))]
    public void No_element_and_no_attribute_comes_of_it_in_the_page(string name)
    {
        var html = Print(name).Html!;
        Assert.Equal(Shape(Print(new string('x', name.Length)).Html!), Shape(html));
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void The_pdf_is_sound_and_runs_nothing(string name)
    {
        var bytes = Print(name).Pdf!;
        using var pdf = PdfDocument.Open(bytes);
        Assert.Equal(1, pdf.NumberOfPages);
        var catalog = pdf.Structure.Catalog.CatalogDictionary.Data.Keys;
        Assert.DoesNotContain(catalog, key => key is "OpenAction" or "AA" or "Names" or "AcroForm" or "Evil");
        if (!name.Any(char.IsControl) && !name.Any(char.IsSurrogate))
        {
            Assert.Equal(name, pdf.Information.Title);
        }

        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Single(bookmarks.Roots);
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void The_workbook_has_no_formula_and_is_well_formed(string name)
    {
        using var zip = new ZipArchive(new MemoryStream(Print(name).Workbook!));
        foreach (var entry in zip.Entries)
        {
            using var stream = entry.Open();
            var xml = XDocument.Load(stream);
            Assert.DoesNotContain(xml.Descendants(), e => e.Name.LocalName == "f");
        }
    }

    [Fact]
    public void An_address_that_runs_something_is_a_fault_and_no_link()
    {
        foreach (var target in new[] { "javascript:alert(1)", "data:text/html,x", "JAVASCRIPT:x", " javascript:x", "java\nscript:x", "file:///etc/passwd", "//evil.example" })
        {
            var printing = Printer.Print(Doc(OneSheet(new Paragraph([new Link(target, T("here"))]))));
            Assert.Equal(FaultKind.BadLink, Assert.Single(printing.Faults).Kind);
            Assert.DoesNotContain("<a ", printing.Html!, StringComparison.Ordinal);
        }
    }

    private static Printing Print(string name)
    {
        var scene = new Scene(name, [new Layer(name, [
            new Symbol(name, [new Circle(new Point(0, 0), 50)]) { Label = new Label([new LabelLine(name)]) },
            new Lettering(new Point(300, 0), name),
            new Dimension(new Point(0, 0), new Point(100, 0), name),
        ])]);
        var sheet = new Sheet(
            "s",
            name,
            new SheetSetup(),
            new SheetHead(name) { For = T(name), Lines = [T(name)], Revision = name, Issued = name },
            new SheetFoot(T(name), T(name)),
            [
                new Heading(1, T(name)) { Id = "h" },
                new Paragraph([new Text(name), new Tag(name), new TickBox(name), new Datum(name, new NumberValue(1, name)), new Link("#h", T(name))]),
                new Pairs([new Pair(T(name), T(name))]),
                new Table([new TableColumn("k", T(name)) { Unit = name }], [new RowGroup([R(C(name)), R(C(new Datum(name, new NumberValue(2, name))))]) { Head = T(name) }]) { Caption = T(name) },
                new Caution(Signal.Danger, T(name), T(name), T(name)),
                new Poster(name, 5),
                new Picture(scene, T(name)),
            ]);
        return Printer.Print(new Document(new DocumentInfo(name) { Author = name, Subject = name, Keywords = name }, [sheet]));
    }

    /// <summary>The names of all elements and their attributes, without their values.</summary>
    private static string Shape(string html)
    {
        // What stands in a script is no markup; how many scripts there are is told.
        var markup = Regex.Replace(html[html.IndexOf("<html", StringComparison.Ordinal)..], "<script>.*?</script>", "<script/>", RegexOptions.Singleline, TimeSpan.FromSeconds(5));
        var page = XDocument.Parse(markup.Replace("<br>", "<br/>", StringComparison.Ordinal));
        return string.Join('\n', page.Descendants().Where(e => e.Name.LocalName is not ("path" or "tspan" or "text" or "rect" or "g")).Select(e => $"{e.Name.LocalName} {string.Join(' ', e.Attributes().Select(a => a.Name.LocalName))}"));
    }
}
