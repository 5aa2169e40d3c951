using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>A document as pages.</summary>
/// <param name="Sheets">For each sheet its pages, in the order of printing.</param>
/// <param name="Pictures">Each scene as it came out.</param>
/// <param name="PageOf">For each id the number of its page.</param>
internal sealed record DocumentLayout(
    IReadOnlyList<IReadOnlyList<Page>> Sheets,
    IReadOnlyDictionary<Scene, SetPicture> Pictures,
    IReadOnlyDictionary<string, int> PageOf)
{
    private const int MostPasses = 3;

    /// <summary>All pages, numbered.</summary>
    public IReadOnlyList<Page> Pages { get; } = [.. Sheets.SelectMany(s => s).Select((p, i) => p with { Number = i + 1 })];

    /// <summary>Shapes the numbers that were not known before.</summary>
    public required Shaper Shaper { get; init; }

    /// <summary>A number that was not known when all else was shaped. For several threads at a time.</summary>
    public ShapedWord NumberShaped(ReadOnlySpan<char> number, bool isStrong)
    {
        lock (Shaper)
        {
            return Shaper.Shape(number, isStrong);
        }
    }

    /// <summary>
    /// Lays a document out. Where it tells on which page something stands, those sheets are laid out again with the numbers; should that
    /// move what they tell of again and again, the numbers are painted into places kept free for them.
    /// </summary>
    public static DocumentLayout LayOut(Document document, FaceSet faces, Wording words, Faults faults)
    {
        var known = new KnownWords();
        var first = new Pass(document, faces, words, faults, Ids.Of(document, faults), known).LayOut();
        var laid = first;
        for (var i = 0; i < MostPasses; i++)
        {
            if (!laid.Pages.Any(TellsPages))
            {
                return laid;
            }

            var again = new Pass(document, faces, words, faults, Ids.Of(document, new Faults()), known) { Before = laid, Numbers = laid.PageOf }.LayOut();
            if (Same(again.PageOf, laid.PageOf))
            {
                return again;
            }

            laid = first with { PageOf = again.PageOf };
        }

        return first;
    }

    private static bool TellsPages(Page page) =>
        page.Strips.Exists(s => s.Strip.Marks.Exists(m => m is PageMark)) || page.Furniture.Foot.Any(m => m is PageMark);

    private static bool Same(IReadOnlyDictionary<string, int> one, IReadOnlyDictionary<string, int> other) =>
        one.Count == other.Count && one.All(o => other.TryGetValue(o.Key, out var page) && page == o.Value);

    /// <summary>One way through all sheets.</summary>
    private sealed record Pass(Document Document, FaceSet Faces, Wording Words, Faults Faults, HashSet<string> Ids, KnownWords Known)
    {
        /// <summary>Sheets that tell no pages are taken from here; null to lay all of them out.</summary>
        public DocumentLayout? Before { get; init; }

        public IReadOnlyDictionary<string, int> Numbers { get; init; } = new Dictionary<string, int>();

        /// <summary>
        /// Lays the sheets out side by side. A sheet needs nothing of another: each has its shaper, faults and pictures to itself. What they
        /// share is read only, but for the words that were shaped. What came of them is put together in the order of the document.
        /// </summary>
        public DocumentLayout LayOut()
        {
            var laid = new LaidSheet[Document.Sheets.Count];
            Parallel.For(0, laid.Length, i => laid[i] = LayOut(i));
            var pictures = new Dictionary<Scene, SetPicture>(Before?.Pictures ?? new Dictionary<Scene, SetPicture>(), ReferenceEqualityComparer.Instance);
            foreach (var (scene, picture) in laid.SelectMany(sheet => sheet.Pictures))
            {
                pictures[scene] = picture;
            }

            // A word with a letter that no font has is told once, however many sheets it stands on.
            var told = new HashSet<string>(StringComparer.Ordinal);
            Faults.AddRange(laid.SelectMany(sheet => sheet.Faults.All).Where(fault => fault.Kind != FaultKind.MissingGlyph || told.Add(fault.Text)));
            var sheets = laid.Select(sheet => sheet.Pages).ToList();
            return new DocumentLayout(sheets, pictures, DocumentLayout.Numbers(sheets)) { Shaper = new Shaper(Faces, Faults, Known) };
        }

        private LaidSheet LayOut(int index)
        {
            var sheet = Document.Sheets[index];
            var faults = new Faults { Sheet = sheet.Id };
            var pictures = new Dictionary<Scene, SetPicture>(ReferenceEqualityComparer.Instance);
            var before = Before?.Sheets[index];
            var pages = before is not null && !before.Any(TellsPages)
                ? before
                : new SheetLayout(sheet, new Shaper(Faces, faults, Known), new Targets(Ids, faults) { Pages = Numbers }, Words, faults).LayOut(pictures);
            return new LaidSheet(pages, pictures, faults);
        }
    }

    private sealed record LaidSheet(IReadOnlyList<Page> Pages, IReadOnlyDictionary<Scene, SetPicture> Pictures, Faults Faults);

    private static Dictionary<string, int> Numbers(List<IReadOnlyList<Page>> sheets)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var number = 0;
        foreach (var page in sheets.SelectMany(s => s))
        {
            number++;
            if (page.IsFirst)
            {
                numbers.TryAdd(page.Sheet.Id, number);
            }

            foreach (var placed in page.Strips)
            {
                foreach (var mark in placed.Strip.Marks)
                {
                    if (mark is AnchorMark anchor)
                    {
                        numbers.TryAdd(anchor.Id, number);
                    }
                }
            }
        }

        return numbers;
    }
}
