using Advance.Paper;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Tests.Paper.Examples;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper;

/// <summary>Each kind of fault, provoked by the least document that has it.</summary>
public sealed class FaultsTests
{
    private static readonly Dictionary<FaultKind, Document> Least = new()
    {
        [FaultKind.MissingGlyph] = Of(new Paragraph(T("drum 🥁"))),
        [FaultKind.TableTooWide] = Of(new Table([Col("a"), Col("b")], [new RowGroup([R("x", new string('w', 400))])])),
        [FaultKind.TallerThanPage] = Of(new Caution(Signal.Danger, T(string.Join(' ', Enumerable.Repeat("many words", 1500))), [], [])),
        [FaultKind.TooManyCells] = Of(new Table([Col("a")], [new RowGroup([R("x", "y")])])),
        [FaultKind.DoubleId] = Of(new Paragraph(T("a")) { Id = "p" }, new Paragraph(T("b")) { Id = "p" }),
        [FaultKind.BadLink] = Of(new Paragraph([new Link("#nowhere", T("there"))])),
        [FaultKind.EmptyPicture] = Of(new Picture(new Scene("nothing", []), [])),
        [FaultKind.LabelsInKey] = Of(new Picture(Horrors.Crowd(200), [])),
        [FaultKind.BadValue] = Of(new Table([Col("a")], [new RowGroup([R(C(Number(double.NaN, "?")))])])),
        [FaultKind.TooDeep] = Of(Enumerable.Range(0, 20).Aggregate((Block)new Paragraph(T("a")), (inner, _) => new KeepTogether([inner]))),
        [FaultKind.HeadTooTall] = Doc(OneSheet() with { Head = new SheetHead("a") { Lines = [.. Enumerable.Repeat(T("a line"), 80)] } }),
    };

    public static TheoryData<FaultKind> Kinds => [.. Enum.GetValues<FaultKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_is_told_alone_with_its_sheet_and_in_a_sentence(FaultKind kind)
    {
        var options = new PrintOptions { Fonts = kind == FaultKind.UnreadableFont ? [new FontFile("notes.txt", "no font"u8.ToArray())] : [] };
        var faults = Printer.Print(kind == FaultKind.UnreadableFont ? Of() : Least[kind], options).Faults;
        Assert.All(faults, f => Assert.Equal(kind, f.Kind));
        var fault = faults[0];
        Assert.Equal(kind == FaultKind.UnreadableFont ? "" : "s", fault.Sheet);
        Assert.EndsWith(".", fault.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_document_has_none() => Assert.Empty(Printer.Print(HarvestSupper.Document).Faults);

    private static Document Of(params Block[] blocks) => Doc(OneSheet(blocks));
}
