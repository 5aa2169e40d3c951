using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using Advance.Sheets;

namespace Advance.Golden;

/// <summary>Each workbook holds what its reader works with, and nothing else.</summary>
public sealed class WorkbookTests
{
    private const string Gig = "harvest-supper";

    [Fact]
    public void The_shop_and_the_patch_have_a_book_each()
    {
        var books = Books(PackageRequest.Everything);
        Assert.Equal(["patch-and-times.xlsx", "shop.xlsx"], books.Keys.Order(StringComparer.Ordinal));
        Assert.Contains("Pull list", books["shop.xlsx"]);
        Assert.DoesNotContain(books["shop.xlsx"], tab => tab.StartsWith("Input list", StringComparison.Ordinal));
        Assert.Contains(books["patch-and-times.xlsx"], tab => tab.StartsWith("Input list", StringComparison.Ordinal));
        Assert.DoesNotContain("Pull list", books["patch-and-times.xlsx"]);
    }

    [Fact]
    public void A_reader_has_no_more_of_a_book_than_of_the_paper()
    {
        var books = Books(PackageRequest.Everything with { Reader = "act" });
        Assert.Equal(["patch-and-times.xlsx"], books.Keys);
        Assert.DoesNotContain(books["patch-and-times.xlsx"], tab => tab.StartsWith("Load-in", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheets_without_a_book_alone_are_refused_in_words()
    {
        var package = PackageBuilder.Build(Samples.Plan(Gig), PackageRequest.Everything with { Formats = ["xlsx"], Only = ["one-line"] }, CompanyFolder.None);
        Assert.Empty(package.Files);
        Assert.Contains("None of these sheets goes into a workbook", Assert.Single(package.Faults), StringComparison.Ordinal);
    }

    private static Dictionary<string, List<string>> Books(PackageRequest request) => PackageBuilder
        .Build(Samples.Plan(Gig), request with { Formats = ["xlsx"] }, CompanyFolder.None)
        .Files.ToDictionary(file => file.Name, file => Tabs(file.Bytes), StringComparer.Ordinal);

    private static List<string> Tabs(ReadOnlyMemory<byte> bytes)
    {
        using var book = new ZipArchive(new MemoryStream(bytes.ToArray()));
        using var reader = new StreamReader(book.GetEntry("xl/workbook.xml")!.Open(), Encoding.UTF8);
        return [.. XDocument.Load(reader).Descendants().Where(element => element.Name.LocalName == "sheet").Select(sheet => sheet.Attribute("name")!.Value)];
    }
}
