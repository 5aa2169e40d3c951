using System.Security.Cryptography;
using Advance.Paper;
using Advance.Paper.Tree;

namespace Advance.Tests.Paper.Layout;

/// <summary>Sheets are laid out side by side, and nothing of that shows.</summary>
public sealed class SideBySideTests
{
    private const int Sheets = 40;
    private const int Times = 15;

    [Fact]
    public void A_document_is_the_same_each_time_whichever_sheet_comes_first()
    {
        var document = Shared("hall");
        var all = Enumerable.Range(0, Times).Select(_ => Printer.Print(document, new PrintOptions { Workbook = false })).ToList();
        Assert.Single(all.Select(printing => Convert.ToHexString(SHA256.HashData(printing.Pdf!))).Distinct(StringComparer.Ordinal));
        Assert.Single(all.Select(printing => printing.Html).Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void A_letter_that_no_font_has_is_told_of_the_first_sheet_that_it_stands_on()
    {
        for (var i = 0; i < Times; i++)
        {
            var fault = Assert.Single(Printer.Print(Shared("🥁"), new PrintOptions { Workbook = false, Html = false }).Faults);
            Assert.Equal((FaultKind.MissingGlyph, "s0"), (fault.Kind, fault.Sheet));
        }
    }

    // All sheets share one word; each has words of its own, and the early ones more of them.
    private static Document Shared(string word) => new(
        new DocumentInfo("Side by side"),
        [
            .. Enumerable.Range(0, Sheets).Select(sheet => new Sheet(
                $"s{sheet}",
                $"Sheet {sheet}",
                new SheetSetup(PageSize.A4),
                new SheetHead($"Sheet {sheet}"),
                new SheetFoot([], []),
                [.. Enumerable.Range(0, Sheets - sheet).Select(line => new Paragraph([new Text($"line-{sheet}-{line} way"), new Text($" {word}")]))])),
        ]);
}
