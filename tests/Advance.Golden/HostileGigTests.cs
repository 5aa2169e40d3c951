using System.Text;
using System.Text.RegularExpressions;
using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;
using Advance.Tests;
using UglyToad.PdfPig;

namespace Advance.Golden;

/// <summary>The sample with a name, an act and a note that somebody sent to do harm: every sheet is still whole, and says no more than they wrote.</summary>
public sealed class HostileGigTests
{
    private const string Act = "<b onclick=alert(1)>Threshers</b> =SUM(A1) \u202Eelbane\u202C &amp; {{ 7 }}";
    private const string Note = "</td></tr></table><script>alert(1)</script> =HYPERLINK(1)";

    private static readonly string LongName = string.Concat(Enumerable.Repeat("Wolfeschlegel", 38)) + " Quill";

    private static readonly Lazy<Package> Built = new(Build);

    [Fact]
    public void The_page_has_no_element_and_no_script_of_theirs()
    {
        var html = Encoding.UTF8.GetString(File("package.html"));
        var before = Encoding.UTF8.GetString(PackageBuilder.Build(Samples.Plan("harvest-supper"), PackageRequest.Everything with { Formats = ["html"] }, CompanyFolder.None).Files.Single().Bytes.Span);
        Assert.Contains("&lt;b onclick=alert(1)&gt;", html, StringComparison.Ordinal);
        Assert.Equal(Count(before, "<script"), Count(html, "<script"));
        Assert.Equal(Count(before, "<section"), Count(html, "<section"));
        Assert.Equal(Count(before, "<h1"), Count(html, "<h1"));
        var withoutValues = Regex.Replace(html, "\"[^\"]*\"", "", RegexOptions.None, TimeSpan.FromSeconds(5));
        Assert.DoesNotMatch("<[a-z][^>]*\\sonclick=", withoutValues);
    }

    [Fact]
    public void The_workbook_has_no_formula_of_theirs()
    {
        using var book = new System.IO.Compression.ZipArchive(new MemoryStream(File("shop.xlsx")));
        foreach (var entry in book.Entries.Where(entry => entry.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(entry.Open());
            Assert.DoesNotMatch("<(x:)?f>[^<]*(HYPERLINK|A1\\))", reader.ReadToEnd());
        }
    }

    [Fact]
    public void Every_letter_on_paper_stands_on_the_paper()
    {
        using var pdf = PdfDocument.Open(File("package.pdf"));
        var off = pdf.GetPages().SelectMany(page => page.Letters
            .Where(letter => letter.BoundingBox.Left < 0 || letter.BoundingBox.Right > page.Width + 0.5 || letter.BoundingBox.Bottom < -0.5 || letter.BoundingBox.Top > page.Height + 0.5)
            .Select(letter => $"page {page.Number}: {letter.Value}"));
        Assert.Empty(off);
        Assert.Contains(pdf.GetPages(), page => page.Text.Contains("alert(1)", StringComparison.Ordinal));
    }

    private static int Count(string text, string part) => Regex.Count(text, Regex.Escape(part), RegexOptions.None, TimeSpan.FromSeconds(5));

    private static byte[] File(string name) => Built.Value.Files.Single(file => file.Name == name).Bytes.ToArray();

    private static Package Build()
    {
        var door = new EditedDoor(new FolderDoor(Repository.Path("sample-gigs")));
        var gig = door.Text("harvest-supper/gig.yaml")
            .Replace("  The Threshers:", $"  '{Act}':", StringComparison.Ordinal)
            .Replace("The Threshers  ", $"{Act}  ", StringComparison.Ordinal)
            .Replace("own active DI", Note, StringComparison.Ordinal)
            .Replace("Sam Quill", LongName, StringComparison.Ordinal);
        var read = BriefReader.Read(door.With("harvest-supper/gig.yaml", gig), "harvest-supper/gig.yaml");
        Assert.True(read.Brief is not null, string.Join('\n', read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        var package = PackageBuilder.Build(Planner.Plan(read.Brief), PackageRequest.Everything, CompanyFolder.None);
        Assert.NotEmpty(package.Files);
        return package;
    }
}
