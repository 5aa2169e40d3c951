using Advance.Paper;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Tests.Paper;

/// <summary>A document laid out, told in a small language: <c>page 1: head, a, b</c>.</summary>
internal sealed class Laid
{
    private readonly Faults faults = new();

    public Laid(Document document, params FontFile[] fonts) =>
        Layout = DocumentLayout.LayOut(document, FaceSet.Of(fonts, faults), new Wording(), faults);

    public DocumentLayout Layout { get; }

    public IReadOnlyList<Fault> Faults => faults.All;

    /// <summary>For each page the first word of each strip; what is repeated stands in brackets.</summary>
    public string Sketch() => string.Join('\n', Layout.Pages.Select(p => $"page {p.Number}: {string.Join(", ", p.Strips.Select(Name).Where(n => n.Length > 0))}"));

    /// <summary>All words of the bodies in reading order, what is repeated left out.</summary>
    public List<string> Words() =>
        [.. Layout.Pages.SelectMany(p => p.Strips).Where(s => !s.IsRepeated).SelectMany(s => s.Strip.Marks).OfType<RunMark>().SelectMany(r => r.Words).Select(w => w.Word.Text)];

    private static string Name(PlacedStrip placed)
    {
        var first = placed.Strip.Marks.OfType<RunMark>().FirstOrDefault()?.Words[0].Word.Text ?? "";
        return placed.IsRepeated && first.Length > 0 ? $"({first})" : first;
    }
}
