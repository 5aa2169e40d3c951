using System.Text;
using Advance.Domain.Facts;
using Advance.Reading.Shapes;
using Advance.Reading.Tables;
using Advance.Reading.Yaml;
using Advance.Tests.Reading.Shapes;
using UnitsNet;

namespace Advance.Tests.Reading.Tables;

public sealed class TableShapeTest
{
    private static readonly Shape<IReadOnlyList<Line>> Plain = new TableShape<Line>(Barn.LineShape);
    private static readonly Shape<IReadOnlyList<Line>> Named = new TableShape<Line>(Barn.LineShape, "id");

    public static readonly TheoryData<string> WaysToWrite = new(
        "- {no: 1, source: Kick, weight: 1.5 kg, tags: [a, b]}\n- no: 10-11\n  source: 'Keys: L/R, #2'\n  weight: TBC act\n",
        "x: |\n  no    | source           | weight  | tags\n  1     | Kick             | 1.5 kg  | a, b\n  10-11 | Keys: L/R, #2    | TBC act |\n",
        "x: |\n  | Source | No | Tags | Weight |\n  |---|---|---|---|\n  | Kick | 1 | a,b | 1.5 kg |\n\n  | Keys: L/R, #2 | 10-11 | | TBC act |\n",
        "x: |\n  no|source|weight|tags\n  1|Kick|1.5kg|a,b\n  10-11|Keys: L/R, #2|TBC act\n",
        "x: lines.csv\n",
        "x: sub/semicolons.csv\n",
        "x: tabs.csv\n",
        "x: units.csv\n",
        "x: lines.xlsx\n");

    [Theory]
    [MemberData(nameof(WaysToWrite))]
    public void All_ways_to_write_a_table_are_equal(string text)
    {
        var (lines, reader) = Read(Plain, text);

        Assert.Empty(reader.Findings);
        Assert.Equal(["1", "10-11"], lines!.Select(line => line.Number.ToString()));
        Assert.Equal(["Kick", "Keys: L/R, #2"], lines!.Select(line => line.Source));
        Assert.Equal(Mass.FromKilograms(1.5), lines![0].Weight.Value);
        Assert.Equal(("act", "10-11 / weight"), (lines[1].Weight.Doubt!.Who, lines[1].Weight.Doubt!.Subject.Replace("x / ", "", StringComparison.Ordinal)));
        Assert.Equal(["a", "b"], lines[0].Tags);
        Assert.Empty(lines[1].Tags);
    }

    [Theory]
    [InlineData("x:\n  k1: {no: 1, source: a}\n  k2: {no: 2, source: b}\n")]
    [InlineData("x:\n  - {id: k1, no: 1, source: a}\n  - {no: 2, id: k2, source: b}\n")]
    [InlineData("x: |\n  id | no | source\n  k1 | 1 | a\n  k2 | 2 | b\n")]
    [InlineData("x: named.csv\n")]
    public void Things_may_stand_in_a_table_under_a_column_of_names(string text)
    {
        var (lines, reader) = Read(Named, text);

        Assert.Empty(reader.Findings);
        Assert.Equal(["k1", "k2"], lines!.Select(line => line.Name));
        Assert.Equal("k1 / weight", lines![0].Weight.Doubt!.Subject);
    }

    public static readonly TheoryData<string, string> Faults = new()
    {
        { "reading/which-unit", "x: |\n  no | source | weight\n  1  | Kick   | «1.5»\n" },
        { "reading/unknown-key", "x: |\n  no | source | «wieght»\n  1  | Kick   | 1 kg\n" },
        { "reading/unknown-key", "x: |\n  no | «sorce» | weight\n  1  | Kick   | 1 kg\n" },
        { "reading/missing-key", "x: |\n  «no» | weight\n  1  | 1 kg\n" },
        { "reading/duplicate-key", "x: |\n  no | source | «no»\n  1  | Kick   | 1\n" },
        { "reading/key-blank", "x: |\n  no | «»  | source\n  1  | a | Kick\n" },
        { "reading/too-many-cells", "x: |\n  no | source\n  1  | Kick   | «extra»\n" },
        { "reading/blank", "x: |\n  no | source\n  1  |«»\n  2  | b\n" },
        { "reading/blank", "x: |\n  no | weight | source\n  1  |  «»\n" },
        { "reading/backwards", "x: |\n  no | source\n  «2-1» | Kick\n" },
        { "reading/folded-table", "x: «>»\n  no | source\n  1 | Kick\n" },
        { "reading/missing-key", "x:\n  - no: 1\n    source: a\n  - no: «2»\n" },
        { "reading/wrong-kind", "x:\n  - «Kick»\n" },
        { "reading/no-such-file", "x: «gone.csv»\n" },
        { "reading/outside", "x: «../../lines.csv»\n" },
        { "reading/not-a-workbook", "x: «broken.xlsx»\n" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_is_one_finding_at_its_cell(string rule, string marked)
    {
        var text = MarkedText.Of(marked);

        var (_, reader) = Read(Plain, text.Text);

        var finding = Assert.Single(reader.Findings);
        Assert.Equal((rule, text.Marks[0].Line, text.Marks[0].Column), (finding.Rule, finding.At.Line, finding.At.Column));
    }

    [Theory]
    [InlineData("reading/blank", "x: |\n  id | no | source\n  «»  | 1 | a\n")]
    [InlineData("reading/duplicate-key", "x: |\n  id | no | source\n  k  | 1 | a\n  «k»  | 2 | b\n")]
    [InlineData("reading/missing-key", "x: |\n  «no» | source\n  1 | a\n")]
    [InlineData("reading/missing-key", "x:\n  - «no»: 1\n    source: a\n")]
    public void A_thing_without_a_name_of_its_own_is_one_finding(string rule, string marked)
    {
        var text = MarkedText.Of(marked);

        var (_, reader) = Read(Named, text.Text);

        var finding = Assert.Single(reader.Findings);
        Assert.Equal((rule, text.Marks[0].Line, text.Marks[0].Column), (finding.Rule, finding.At.Line, finding.At.Column));
    }

    [Fact]
    public void A_blank_row_is_refused_even_where_nothing_of_a_row_is_needed()
    {
        var text = MarkedText.Of("x:\n  - {source: Kick}\n  - «''»\n");
        var loose = new TableShape<string>(new("note", "A note.", keys => keys.Defaulted("source", Written.Text, "", "Source.", "nothing")));

        var (_, reader) = Read(loose, text.Text);

        var finding = Assert.Single(reader.Findings);
        Assert.Equal(("reading/blank", text.Marks[0].Line, text.Marks[0].Column), (finding.Rule, finding.At.Line, finding.At.Column));
    }

    [Theory]
    [InlineData("no,source,weight\n1,Kick,«1.5»\n", "reading/which-unit")]
    [InlineData("no,source,weight\n1,\"Kick\",\"1.5 «ton»\"\n", "reading/ton")]
    [InlineData("no;source;weight\n1;\"a;b\";«1,5» kg\n", "reading/decimal-comma")]
    [InlineData("no,source,weight\n1,«»,1 kg\n", "reading/blank")]
    [InlineData("no,source\n1,«\"»Kick\n", "reading/unclosed")]
    [InlineData("no,source\n1,\"Kick\"« drum»\n", "reading/after-close")]
    [InlineData("no,source\n1,Kick,«extra»\n", "reading/too-many-cells")]
    [InlineData("no,source,«colour»\n1,Kick,red\n", "reading/unknown-key")]
    [InlineData("«»", "reading/empty")]
    public void A_fault_in_a_file_of_values_points_into_that_file(string marked, string rule)
    {
        var text = MarkedText.Of(marked, "sub/cells.csv");

        var (_, reader) = Read(Plain, "x: cells.csv\n", ("cells.csv", Encoding.UTF8.GetBytes(text.Text)));

        var finding = Assert.Single(reader.Findings);
        Assert.Equal((rule, text.Marks[0].Line, text.Marks[0].Column, "sub/cells.csv"), (finding.Rule, finding.At.Line, finding.At.Column, finding.At.File));
        Assert.Equal(text.Text.Split('\n')[finding.At.Line - 1], reader.Sources.Quote(finding.At)!.Value.Line);
    }

    [Fact]
    public void A_fault_in_a_workbook_points_at_row_and_cell()
    {
        var bytes = Workbook.Of(["no", "source", "weight"], [1, "Kick", "1 kg"], [], [2, "Snare", "heavy"]);

        var (_, reader) = Read(Plain, "x: cells.xlsx\n", ("cells.xlsx", bytes));

        var finding = Assert.Single(reader.Findings);
        Assert.Equal(new Mark("sub/cells.xlsx", 4, 3), finding.At);
        Assert.Equal(new("2 | Snare | heavy", 12, 5), reader.Sources.Quote(finding.At));
    }

    [Fact]
    public void Cells_of_a_workbook_are_read_as_they_would_be_written()
    {
        var bytes = Workbook.Of(["no", "source"], [1, new DateOnly(2026, 9, 12)], [2, new TimeOnly(19, 30)], [3, 0.8m], [4, 0.1]);

        var (lines, reader) = Read(Plain, "x: cells.xlsx\n", ("cells.xlsx", bytes));

        Assert.Empty(reader.Findings);
        Assert.Equal(["Sat 12 Sep 2026", "19:30", "80 %", "0.1"], lines!.Select(line => line.Source));
    }

    [Fact]
    public void A_workbook_that_unfolds_without_end_is_refused()
    {
        var bytes = Workbook.Of(["no", new string('x', 120_000_000)]);

        var (_, reader) = Read(Plain, "x: cells.xlsx\n", ("cells.xlsx", bytes));

        Assert.True(bytes.Length < TableNodes.MostBytes);
        Assert.Equal(["reading/too-large"], reader.Findings.Select(finding => finding.Rule));
    }

    [Fact]
    public void Rows_without_end_are_cut_and_said_to_be()
    {
        var rows = Enumerable.Range(1, WorkbookTable.MostRows + 5).Select(row => new object?[] { row, "x" }).Prepend(["no", "source"]).ToArray();

        var (_, reader) = Read(Plain, "x: cells.xlsx\n", ("cells.xlsx", Workbook.Of(rows)));

        Assert.Equal(["reading/too-large"], reader.Findings.Select(finding => finding.Rule));
    }

    private static (IReadOnlyList<T>? Rows, Reader Reader) Read<T>(Shape<IReadOnlyList<T>> shape, string text, params (string Path, byte[] Bytes)[] others)
    {
        var door = new MemoryDoor(
        [
            ("sub/gig.yaml", Encoding.UTF8.GetBytes(text)),
            ("sub/lines.csv", "no,source,weight,tags\n1,Kick,1.5 kg,\"a, b\"\n10-11,\"Keys: L/R, #2\",TBC act,\n"u8.ToArray()),
            ("sub/sub/semicolons.csv", [0xEF, 0xBB, 0xBF, .. "No;Source;Weight;Tags;;\r\n1;Kick;1.5 kg;a,b;;\r\n;;;;;\r\n10-11;Keys: L/R, #2;TBC act;;;\r\n"u8]),
            ("sub/tabs.csv", "no\tsource\tweight\ttags\n1\tKick\t1.5 kg\ta,b\n10-11\tKeys: L/R, #2\tTBC act\t\n"u8.ToArray()),
            ("sub/units.csv", "no,source,Weight (kg),tags\n1,Kick,1.5,\"a,b\"\n10-11,\"Keys: L/R, #2\",TBC act,\n"u8.ToArray()),
            ("sub/named.csv", "id,no,source\nk1,1,a\nk2,2,b\n"u8.ToArray()),
            ("sub/lines.xlsx", Workbook.Of(["no", "source", "weight kg", "tags"], [1, "Kick", 1.5, "a, b"], [null, null, null, null], ["10-11", "Keys: L/R, #2", "TBC act", null])),
            ("sub/broken.xlsx", "PK no workbook"u8.ToArray()),
            .. others.Select(other => ($"sub/{other.Path}", other.Bytes)),
        ]);
        var reader = new Reader(door);
        var root = new YamlFiles(reader).Open("sub/gig.yaml", default, "gig.yaml");
        var node = root is MapNode map ? map.Entries[0].Value : root;
        return (node is not null && shape.TryRead(node, reader, out var lines) ? lines : null, reader);
    }
}
