using System.Text;
using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Reading.Files;
using Advance.Reading.Yaml;

namespace Advance.Tests.Reading.Yaml;

public sealed class YamlFileTest
{
    private readonly List<Finding> findings = [];

    [Theory]
    [InlineData("a: «12 m»\n")]
    [InlineData("a:    «12 m»   # remark\n")]
    [InlineData("a: «'12 m'»\n")]
    [InlineData("a: «\"12 m\"»\n")]
    [InlineData("a: [x, «12 m»]\n")]
    [InlineData("a: {b: «12 m», c: d}\n")]
    [InlineData("- x\n-   «12 m»\n")]
    [InlineData("a:\n  «12 m»\n")]
    [InlineData("b: *x\na: &x «12 m»\n", "reading/no-such-anchor")]
    [InlineData("a: &x «12 m»\nb: *x\n")]
    [InlineData("😀: «12 m»\n")]
    public void A_scalar_is_marked_from_its_first_sign_to_its_last(string marked, string? alsoFound = null)
    {
        var text = MarkedText.Of(marked);

        var found = Scalars(Read(text.Text)).First(scalar => scalar.Text == "12 m");

        Assert.Equal(text.Marks[0], found.At);
        Assert.Equal(alsoFound is null ? [] : [alsoFound], findings.Select(finding => finding.Rule));
    }

    [Theory]
    [InlineData("a: SR «4.6» m\n", "SR 4.6 m")]
    [InlineData("a: 'SR «4.6» m'\n", "SR 4.6 m")]
    [InlineData("a: \"SR «4.6» m\"\n", "SR 4.6 m")]
    [InlineData("a: «\"SR\\t4.6 m\"»\n", "SR\t4.6 m")]
    [InlineData("a: «'it''s 4.6 m'»\n", "it's 4.6 m")]
    [InlineData("a: «SR»\n  4.6 m\n", "SR 4.6 m")]
    public void A_part_of_a_scalar_is_marked_where_it_can_be_and_by_the_whole_where_not(string marked, string value)
    {
        var text = MarkedText.Of(marked);

        var scalar = Scalars(Read(text.Text)).Single(one => one.Text == value);

        Assert.Equal(text.Marks[0], scalar.Part(value.IndexOf("4.6", StringComparison.Ordinal), 3));
    }

    [Fact]
    public void A_block_knows_its_lines()
    {
        var map = (MapNode)Read("a:\n  t: |\n    x | y\n\n    1 | 2\n\n  # remark\n  u: |-\n    last")!;
        var inner = (MapNode)map.Entries[0].Value;
        var first = (BlockNode)inner.Entries[0].Value;
        var second = (BlockNode)inner.Entries[1].Value;

        Assert.Equal(("x | y\n\n1 | 2", 3, 5, false), (first.Text, first.FirstLine, first.LastLine, first.IsFolded));
        Assert.Equal(("last", 9, 9, false), (second.Text, second.FirstLine, second.LastLine, second.IsFolded));
        Assert.Equal(new Mark("gig.yaml", 2, 6), first.At);
    }

    [Fact]
    public void Blocks_with_less_than_they_need_are_read_too()
    {
        var map = (MapNode)Read("a: |\nb: >\n  x\n  y\nc: |2\n    deep\nd: &n |\n  z\ne: *n\n")!;
        var blocks = map.Entries.Select(entry => (BlockNode)entry.Value).ToList();

        Assert.Equal(["", "x y", "  deep", "z", "z"], blocks.Select(block => block.Text));
        Assert.True(blocks[0].LastLine < blocks[0].FirstLine);
        Assert.True(blocks[1].IsFolded);
        Assert.Equal(new Mark("gig.yaml", 7, 7), blocks[3].At);
    }

    [Fact]
    public void Repeats_are_followed_and_keep_their_first_place()
    {
        var map = (MapNode)Read("a: &x\n  b: c\nd: *x\ne:\n  <<: *x\n  f: g\nh:\n  b: own\n  <<: *x\n")!;

        Assert.Same(map.Entries[0].Value, map.Entries[1].Value);
        Assert.Equal(["f", "b"], Keys(map.Entries[2].Value));
        Assert.Equal("own", ((ScalarNode)((MapNode)map.Entries[3].Value).Entries.Single().Value).Text);
        Assert.Empty(findings);
    }

    [Theory]
    [InlineData("reading/duplicate-key", "a: 1\nb: 2\n«a»: 3\n")]
    [InlineData("reading/duplicate-key", "x: {a: 1, «a»: 2}\n")]
    [InlineData("reading/key-blank", "x:\n  :« »3\n")]
    [InlineData("reading/key-not-text", "? «[»a, b]\n: c\n")]
    [InlineData("reading/merge", "a: &x 1\nb:\n  «<<»: *x\n")]
    [InlineData("reading/second-document", "a: 1\n«---»\nb: 2\n")]
    [InlineData("reading/repeat-in-itself", "a: &x\n  b: «*x»\n")]
    [InlineData("reading/syntax", "a:\n  - 1\n  «b»: 2\n")]
    [InlineData("reading/second-colon", "a: {x: 1\n  y«:» 2}\n")]
    [InlineData("reading/empty", "«#» nothing yet\n")]
    [InlineData("reading/empty", "«»")]
    public void What_is_wrong_with_the_structure_is_one_finding_at_its_place(string rule, string marked)
    {
        var text = MarkedText.Of(marked);

        Read(text.Text);

        var finding = Assert.Single(findings);
        Assert.Equal((rule, text.Marks[0].Line, text.Marks[0].Column), (finding.Rule, finding.At.Line, finding.At.Column));
    }

    [Fact]
    public void The_second_of_two_like_keys_points_back_to_the_first_and_is_left_out()
    {
        var map = (MapNode)Read("a: 1\nb: 2\na: 3\n")!;

        Assert.Contains("line 1", findings[0].Says.ToString(), StringComparison.Ordinal);
        Assert.Equal(["1", "2"], map.Entries.Select(entry => ((ScalarNode)entry.Value).Text));
    }

    [Fact]
    public void Brackets_in_brackets_come_to_an_end()
    {
        Assert.Null(Read("a: " + new string('[', 200_000)));
        Assert.Equal(["reading/too-deep"], findings.Select(finding => finding.Rule));
    }

    [Fact]
    public void Dashes_in_dashes_come_to_an_end()
    {
        Assert.Null(Read(string.Concat(Enumerable.Repeat("- ", 50_000)) + "x"));
        Assert.Equal(["reading/too-deep"], findings.Select(finding => finding.Rule));
    }

    [Fact]
    public void Sixty_levels_are_read_and_sixty_one_are_not()
    {
        Assert.NotNull(Read("a: " + new string('[', 59) + "x" + new string(']', 59)));
        Assert.Empty(findings);
        Assert.Null(Read("a: " + new string('[', 60) + "x" + new string(']', 60)));
        Assert.Equal(["reading/too-deep"], findings.Select(finding => finding.Rule));
    }

    [Fact]
    public void An_alias_bomb_does_not_go_off()
    {
        var bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (var level = 1; level < 12; level++)
        {
            bomb.Append($"a{level}: &a{level} [{string.Join(", ", Enumerable.Repeat($"*a{level - 1}", 10))}]\n");
        }

        bomb.Append("last: *a11\n");

        Assert.Null(Read(bomb.ToString()));
        Assert.Equal(["reading/too-many-repeats"], findings.Select(finding => finding.Rule));
    }

    [Fact]
    public void A_thousand_anchors_take_no_time()
    {
        var many = new StringBuilder();
        for (var number = 0; number < 20_000; number++)
        {
            many.Append($"k{number}: &a{number} x\nl{number}: *a{number}\n");
        }

        Assert.NotNull(Read(many.ToString()));
        Assert.Empty(findings);
    }

    private Node? Read(string text) => YamlFile.Read(new TextSource("gig.yaml", text), findings);

    private static IEnumerable<string> Keys(Node node) => ((MapNode)node).Entries.Select(entry => entry.Key.Text);

    private static IEnumerable<ScalarNode> Scalars(Node? node) => node switch
    {
        ScalarNode scalar => [scalar],
        ListNode list => list.Items.SelectMany(Scalars),
        MapNode map => map.Entries.SelectMany(entry => Scalars(entry.Key).Concat(Scalars(entry.Value))),
        _ => [],
    };
}
