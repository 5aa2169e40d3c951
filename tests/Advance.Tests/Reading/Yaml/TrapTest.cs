using Advance.Domain.Findings;
using Advance.Reading.Files;
using Advance.Reading.Yaml;

namespace Advance.Tests.Reading.Yaml;

public sealed class TrapTest
{
    public static readonly TheoryData<string, string> Traps = new()
    {
        { "reading/tab", "stage:\n«\t»size: 8 x 5 m\n" },
        { "reading/tab", "stage:\n  «\t»size: 8 x 5 m\n\theight: 1 m\n" },
        { "reading/glued-hash", "source: Snare «#2»\n" },
        { "reading/glued-hash", "colour: «#ff0000»\n" },
        { "reading/glued-hash", "boxes: [Kick «#1» is left\n  ]\n" },
        { "reading/glued-hash", "- Snare «#2»\n" },
        { "reading/tbc-in-comment", "rating: 63 A # «TBC» with the venue\n" },
        { "reading/tbc-in-comment", "rating: # ask, «tbd»\n" },
        { "reading/tbc-in-comment", "rating: 63 A #«TBC»\n" },
        { "reading/tbc-in-comment", "a: {b: 1, # «TBC»\n  c: 2}\n" },
        { "reading/leading-sign", "name: «@»home\n" },
        { "reading/leading-sign", "name: «%»80\n" },
        { "reading/leading-sign", "name: «`»tick\n" },
        { "reading/leading-sign", "- «@»home\n" },
        { "reading/leading-sign", "a: [x, «@»home]\n" },
        { "reading/leading-sign", "a: {b: «%»80, c: d}\n" },
        { "reading/leading-sign", "note: «>» 5 m\n" },
        { "reading/leading-sign", "inputs: «|» ch | source\n  1 | Kick\n" },
        { "reading/leading-sign", "people: «-» Ada\n" },
        { "reading/leading-sign", "note: «*» see below\n" },
        { "reading/no-such-anchor", "note: «*see» below\n" },
        { "reading/no-such-anchor", "note: [«*see»]\n" },
        { "reading/leading-sign", "a: &x 1\nb: *x «and more»\n" },
        { "reading/empty-anchor", "note: «&» Sons\n" },
        { "reading/unused-anchor", "client: «&Sons» Ltd\n" },
        { "reading/unused-anchor", "client: «&Sons»\nvenue: x\n" },
        { "reading/tag", "name: «!»important\n" },
        { "reading/tag", "name: «!»!str 12\n" },
        { "reading/tag", "stage: «!»thing\n  size: 1\n" },
        { "reading/tag", "a: [«!»x y, z]\n" },
        { "reading/second-colon", "what: Doors«:» main\n" },
        { "reading/second-colon", "what: Doors«:»\n" },
        { "reading/second-colon", "- a: b«:» c\n" },
        { "reading/second-colon", "a: {place: SR«:» left, b: c}\n" },
        { "reading/comma-in-braces", "a: {what: Snare, «top», b: c}\n" },
        { "reading/comma-in-braces", "a: {what: Snare, «top»}\n" },
        { "reading/comma-in-braces", "a: {«Snare», b: c}\n" },
        { "reading/unclosed", "sets: «[»20:00, 21:00\nday: x\n" },
        { "reading/unclosed", "desk: «{»item: desk-32\nday: x\n" },
        { "reading/unclosed", "sets: «[»20:00, 21:00" },
        { "reading/unclosed", "sets: [20:00, «{»a: 1]\nday: x\n" },
        { "reading/unclosed", "name: «\"»Big Al\nday: x\n" },
        { "reading/unclosed", "name: «'»n roll\nday: x\n" },
        { "reading/unclosed", "name: [«\"»Big Al]\nday: x\n" },
        { "reading/after-close", "name: \"Big\" «Al»\n" },
        { "reading/after-close", "name: '63' «A # a comment»\n" },
        { "reading/after-close", "place: [USR] «box»\n" },
        { "reading/after-close", "place: {a: b}«}»\n" },
        { "reading/after-close", "name: [\"Big\" «A»l]\n" },
        { "reading/no-colon", "gig: x\n«foo bar»\nday: y\n" },
        { "reading/no-colon", "gig: x\n«day:»Sat\n" },
        { "reading/no-colon", "«gig:»Harvest\nday: y\n" },
        { "reading/indent", "gig: x\n  «day»: y\nz: 1\n" },
        { "reading/indent", "- x\n  «day»: y\n" },
        { "reading/indent", "gig: \"x\"\n  «day»: y\n  b: 1\nz: 1\n" },
        { "reading/indent", "a:\n    b: 1\n  «c»: 2\n" },
    };

    [Theory]
    [MemberData(nameof(Traps))]
    public void Is_spoken_of_once_at_its_place(string rule, string marked)
    {
        var text = MarkedText.Of(marked.Replace(" # a comment»", "» # a comment", StringComparison.Ordinal));
        var findings = new List<Finding>();

        YamlFile.Read(new TextSource("gig.yaml", text.Text), findings);

        var finding = Assert.Single(findings);
        Assert.Equal((rule, text.Marks[0]), (finding.Rule, finding.At));
    }

    [Theory]
    [InlineData("desk: {item: desk-32, place: DS 16 m}\n")]
    [InlineData("a: {b: [1, 2, {c: d}], e: 'f, g: h', i: \"}\"}\n")]
    [InlineData("a: [20:00 for 45 min, 21:15 for 60 min]\n")]
    [InlineData("a: [\n  x, # a comment\n  # TBC in a line of its own\n  y,\n]\nb: c\n")]
    [InlineData("a: {b: 1,\n  c: 2,\n}\n")]
    [InlineData("inputs: |\n  ch | source: top | #2 | [x | \"y | &z | TBC\n\n  # 3 | !\n\t\nb: c\n")]
    [InlineData("a:\n  - |\n    @x: y: z\n   # not a comment\n  - >-\n    !x\n")]
    [InlineData("a: |2\n    x: y: z\n  \tb\nc: d\n")]
    [InlineData("- inputs: |\n    a: b: c\n  place: USR\n")]
    [InlineData("a: \"x: y, # z & [ TBC\"\nb: 'it''s: #2'\n")]
    [InlineData("a: \"over\n  two: lines # not a comment\"\nb: c\n")]
    [InlineData("# TBC: the whole line\n#glued\na: b # a remark, as it should be\n")]
    [InlineData("a: b #\nc: d # ---\n")]
    [InlineData("size: 12' 6\" x 4'\nb: it's \"so\"\nc: a,b [c] {d} & e @ f! g* 5% > 4 | 3\n")]
    [InlineData("url: https://example.org:80/x#y\ntime: 19:30\n")]
    [InlineData("a: &x {b: c}\nd: *x\ne: [*x, *x]\nf:\n  <<: *x\n")]
    [InlineData("a: &x\n  b: c\nd: *x\n")]
    [InlineData("a: &unused\n  b: c\n")]
    [InlineData("a:\n- b: c\n  d: e\n-\n  f: g\n- - h\n  - i\nj: k\n")]
    [InlineData("a:\n  text on the next line\n  and the next\nb: c\n")]
    [InlineData("\"The: Act\": x\n'b': y\n? c\n: d\n")]
    [InlineData("%YAML 1.2\n---\na: b\n")]
    [InlineData("a: -10 deg\nb: --\nc: -\n")]
    [InlineData("a:\nb: \nc: # nothing yet\nd: e\n")]
    [InlineData("a: one\n  and two # remark\nb: c\n")]
    public void Is_not_seen_where_there_is_none(string text)
    {
        var findings = new List<Finding>();
        var source = new TextSource("gig.yaml", text);
        var mending = new Mending(source, findings);

        new LineScan(source, mending).Run();

        Assert.Empty(findings);
        Assert.Equal(text, mending.Text);
    }

    [Fact]
    public void Does_not_hide_what_comes_after()
    {
        var text = MarkedText.Of(string.Join('\n', Traps
            .Select(row => (string)row[1])
            .Where(trap => trap.StartsWith("name", StringComparison.Ordinal) || trap.StartsWith("a: {", StringComparison.Ordinal))
            .Select((trap, index) => $"k{index}:\n  {trap.TrimEnd().Replace("\nday", "\n  day", StringComparison.Ordinal).Replace("\n  c: 2", "\n    c: 2", StringComparison.Ordinal)}"))
            .Replace(" # a comment»", "» # a comment", StringComparison.Ordinal) + "\nlast: «@»\n");
        var findings = new List<Finding>();

        var root = YamlFile.Read(new TextSource("gig.yaml", text.Text), findings);

        Assert.Equal(text.Marks, findings.Select(finding => finding.At));
        Assert.Equal("last", ((MapNode)root!).Entries[^1].Key.Text);
    }
}
