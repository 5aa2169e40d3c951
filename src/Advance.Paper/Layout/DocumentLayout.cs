using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>A document as pages.</summary>
/// <param name="Pages">In the order of printing.</param>
/// <param name="Pictures">Each scene as it came out.</param>
/// <param name="PageOf">For each id the number of its page.</param>
internal sealed record DocumentLayout(
    IReadOnlyList<Page> Pages,
    IReadOnlyDictionary<Scene, SetPicture> Pictures,
    IReadOnlyDictionary<string, int> PageOf)
{
    /// <summary>Shapes the numbers that were not known before.</summary>
    public required Shaper Shaper { get; init; }

    /// <summary>Lays a document out.</summary>
    public static DocumentLayout LayOut(Document document, FaceSet faces, Wording words, Faults faults)
    {
        var ids = Ids.Of(document, faults);
        var laid = Try("00");
        // Only a very long document needs more room for the numbers of pages; it is laid out anew.
        return laid.Pages.Count > 99 && laid.HasPageNumbers() ? Try("0000") : laid;

        DocumentLayout Try(string widest)
        {
            var shaper = new Shaper(faces, faults);
            var targets = new Targets(ids, faults) { WidestPage = widest };
            var pages = new List<Page>();
            var pictures = new Dictionary<Scene, SetPicture>(ReferenceEqualityComparer.Instance);
            foreach (var sheet in document.Sheets)
            {
                faults.Sheet = sheet.Id;
                pages.AddRange(new SheetLayout(sheet, shaper, targets, words, faults).LayOut(pictures));
            }

            faults.Sheet = "";
            return new DocumentLayout([.. pages.Select((p, i) => p with { Number = i + 1 })], pictures, Numbers(pages)) { Shaper = shaper };
        }
    }

    private bool HasPageNumbers() => Pages.Any(p => p.Strips.Exists(s => s.Strip.Marks.Exists(m => m is PageMark))
        || p.Furniture.Foot.Any(m => m is PageMark));

    private static Dictionary<string, int> Numbers(List<Page> pages)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < pages.Count; i++)
        {
            if (pages[i].IsFirst)
                numbers.TryAdd(pages[i].Sheet.Id, i + 1);
            foreach (var placed in pages[i].Strips)
                foreach (var mark in placed.Strip.Marks)
                    if (mark is AnchorMark anchor)
                        numbers.TryAdd(anchor.Id, i + 1);
        }

        return numbers;
    }
}
