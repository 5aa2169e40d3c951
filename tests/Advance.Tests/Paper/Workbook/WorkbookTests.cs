using System.IO.Compression;
using System.Xml.Linq;
using Advance.Paper;
using Advance.Paper.Tree;
using Advance.Paper.Workbook;
using Advance.Tests.Paper.Examples;
using ExcelDataReader;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Workbook;

/// <summary>The workbook as an independent reader finds it.</summary>
public sealed class WorkbookTests
{
    static WorkbookTests() => System.Text.Encoding.RegisterProvider(System.Text.CodePagesEncodingProvider.Instance);

    private static readonly PrintOptions OnlyWorkbook = new() { Pdf = false, Html = false };

    [Fact]
    public void Numbers_are_numbers_and_days_are_days()
    {
        var table = new Table(
            [Col("name"), Col("mass", Align.Right, "kg"), Col("day"), Col("time"), Col("moment"), Col("words")],
            [new RowGroup([R(
                C("sub"),
                C(new Datum("52,5", new NumberValue(52.5, "kg") { Decimals = 1 })),
                C(new Datum("Sat", new DateValue(new DateOnly(2026, 9, 12)))),
                C(new Datum("20:00", new TimeValue(new TimeOnly(20, 0)))),
                C(new Datum("late", new MomentValue(new DateTime(2026, 9, 12, 23, 30, 0)))),
                C(new Text("about "), new Datum("3", new NumberValue(3))))])]);
        var rows = Read(OneSheet(table));
        Assert.Equal(["name", "mass (kg)", "day", "time", "moment", "words"], rows[0]);
        Assert.Equal("sub", rows[1][0]);
        Assert.Equal(52.5, rows[1][1]);
        Assert.Equal(new DateTime(2026, 9, 12), rows[1][2]);
        Assert.Equal(20, rows[1][3] is TimeSpan span ? span.TotalHours : ((DateTime)rows[1][3]!).TimeOfDay.TotalHours);
        Assert.Equal(new DateTime(2026, 9, 12, 23, 30, 0), rows[1][4]);
        Assert.Equal("about 3", rows[1][5]);
    }

    [Fact]
    public void A_group_is_a_column()
    {
        var table = new Table([Col("item")], [new RowGroup([R("a"), R("b")]) { Head = T("Power") }, new RowGroup([R("c")]) { Head = T("Sound") }]);
        var rows = Read(OneSheet(table));
        Assert.Equal(["Power", "Power", "Sound"], Enumerable.Range(1, 3).Select(i => rows[i][0]));
        Assert.Equal(["a", "b", "c"], Enumerable.Range(1, 3).Select(i => rows[i][1]));
    }

    [Fact]
    public void Only_a_sum_in_the_tree_becomes_a_formula_and_has_its_value()
    {
        var table = new Table(
            [Col("item"), Col("A", Align.Right)],
            [new RowGroup([R(C("=1+1"), C(Number(2.5, "2.5"))), R(C("b"), C(Number(4, "4")))])])
        {
            Foot = [R(C("all"), C(new Datum("6.5", new SumValue(6.5)))) with { Kind = RowKind.Total }],
        };
        var formulas = Part(Print(OneSheet(table)), "xl/worksheets/sheet1.xml").Descendants().Where(e => e.Name.LocalName == "f").ToList();
        Assert.Equal("SUBTOTAL(109,B2:B3)", Assert.Single(formulas).Value);
        Assert.Equal(6.5, Read(OneSheet(table))[3][1]);
        Assert.Equal("=1+1", Read(OneSheet(table))[1][0]);
    }

    [Fact]
    public void Heads_are_frozen_and_filtered_and_printed_on_each_page()
    {
        var book = Print(HarvestSupper.Document);
        var sheet = Part(book, "xl/worksheets/sheet1.xml");
        Assert.Equal("1", sheet.Descendants().Single(e => e.Name.LocalName == "pane").Attribute("ySplit")!.Value);
        Assert.Equal("A1:Q7", sheet.Descendants().Single(e => e.Name.LocalName == "autoFilter").Attribute("ref")!.Value);
        Assert.Equal("landscape", sheet.Descendants().Single(e => e.Name.LocalName == "pageSetup").Attribute("orientation")!.Value);
        Assert.Contains(Part(book, "xl/workbook.xml").Descendants(), e => e.Attribute("name")?.Value == "_xlnm.Print_Titles");
    }

    [Fact]
    public void The_same_document_gives_the_same_bytes() =>
        Assert.Equal(Print(HarvestSupper.Document), Print(HarvestSupper.Document));

    [Fact]
    public void Tabs_have_names_that_every_program_takes()
    {
        var names = new TabNames();
        Assert.Equal("Input list", names.Next("Input list", ""));
        Assert.Equal("INPUT LIST 2", names.Next("INPUT LIST", ""));
        Assert.Equal("Input list Mixes", names.Next("Input list", "Mixes"));
        Assert.Equal("a b c d e f g", names.Next("a[b]c:d*e?f/g", ""));
        Assert.Equal("Table", names.Next("'?'", ""));
        Assert.Equal("The Fiddlers’’ list", names.Next("The Fiddlers'' list", ""));
        Assert.Equal(31, names.Next(new string('x', 40), "").Length);
        Assert.Equal(new string('x', 29) + " 2", names.Next(new string('x', 50), ""));
        Assert.Equal("History 2", names.Next("History", ""));
    }

    [Fact]
    public void A_number_that_is_none_is_told_and_written_as_text()
    {
        var table = new Table([Col("a")], [new RowGroup([R(C(Number(double.NaN, "n/a"))), R(C(new Datum("old", new DateValue(new DateOnly(1899, 1, 1)))))])]);
        var printing = Printer.Print(Doc(OneSheet(table)), OnlyWorkbook);
        Assert.Equal(FaultKind.BadValue, Assert.Single(printing.Faults).Kind);
        Assert.Equal(["n/a", "old"], Enumerable.Range(1, 2).Select(i => Read(printing.Workbook!)[i][0]));
    }

    [Fact]
    public void A_document_without_tables_still_opens() =>
        Assert.Equal("Harvest Supper", Read(OneSheet(new Paragraph(T("x"))))[0][0]);

    private static byte[] Print(Document document) => Printer.Print(document, OnlyWorkbook).Workbook!;

    private static byte[] Print(Sheet sheet) => Print(Doc(sheet));

    private static List<object?[]> Read(Sheet sheet) => Read(Print(sheet));

    /// <summary>The rows of the first tab.</summary>
    private static List<object?[]> Read(byte[] book)
    {
        using var reader = ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(book));
        var rows = new List<object?[]>();
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetValue)]);
        }

        return rows;
    }

    private static XDocument Part(byte[] book, string name)
    {
        using var zip = new ZipArchive(new MemoryStream(book));
        using var stream = zip.GetEntry(name)!.Open();
        return XDocument.Load(stream);
    }
}

