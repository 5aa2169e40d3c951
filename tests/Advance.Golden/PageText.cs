using System.Globalization;
using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Advance.Golden;

/// <summary>What stands where on the pages of a PDF, as an independent reader finds it: for each word the page, its left edge and base line in points.</summary>
internal static class PageText
{
    public static string Of(byte[] pdf)
    {
        var text = new StringBuilder();
        using var document = PdfDocument.Open(pdf);
        foreach (var page in document.GetPages())
        {
            text.Append(CultureInfo.InvariantCulture, $"page {page.Number}: {page.Width:0} x {page.Height:0}\n");
            var words = page.GetWords().OrderByDescending(word => Math.Round(Base(word))).ThenBy(word => word.BoundingBox.Left);
            foreach (var line in words.GroupBy(word => Math.Round(Base(word))))
            {
                var first = line.First();
                text.Append(CultureInfo.InvariantCulture, $"  {first.BoundingBox.Left,6:0.0} {Base(first),6:0.0}  {string.Join(' ', line.Select(word => word.Text))}\n");
            }
        }

        return text.ToString();
    }

    private static double Base(Word word) => word.Letters[0].StartBaseLine.Y;
}
