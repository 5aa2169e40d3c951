using Advance.Paper.Tree;

namespace Advance.Sheets.Markup.Subset;

/// <summary>The elements that take the whole width of where they stand.</summary>
internal static class BlockForms
{
    private const Content Sentence = Content.Text | Content.Line;

    public static AttributeRule Id { get; } = new("id", Values.Id, "links lead to it");

    public static IReadOnlyList<Form> All { get; } =
    [
        Heading("h1", "a large heading, which becomes a bookmark", "<h1>Power</h1>"),
        Heading("h2", "a heading", "<h2>Service A</h2>"),
        Heading("h3", "a small heading", "<h3>Spare outlets</h3>"),
        new("p", null, Content.Block | Content.Sentence, Sentence)
        {
            Means = "running text",
            Gives = typeof(Paragraph),
            Example = "<p data-align=\"centre\">Gate 2, then left.</p>",
            Attributes = [Id, new("data-align", Values.OneOf(typeof(Align)), "default `left`")],
        },
        new("p", "poster", Content.Block, Content.Text)
        {
            Means = "one line as large as the width allows, to be read from afar",
            Gives = typeof(Poster),
            Example = "<p class=\"poster\" data-mm=\"40\">FOH</p>",
            Attributes = [Id, new("data-mm", Values.Over0, "height of a capital letter at most, in mm") { IsRequired = true }],
        },
        new("ul", null, Content.Block, Content.Item)
        {
            Means = "a list of short items with dashes",
            Gives = typeof(ItemList),
            Example = "<ul><li>Ramp</li><li>Two trolleys</li></ul>",
            Attributes = [Id],
        },
        new("ol", null, Content.Block, Content.Item)
        {
            Means = "a list of short items with numbers",
            Gives = typeof(ItemList),
            Example = "<ol><li>Earth</li><li>Neutral</li></ol>",
            Attributes = [Id],
        },
        new("li", null, Content.Item, Sentence) { Means = "an item of a list", Gives = typeof(ItemList) },
        new("dl", null, Content.Block, Content.Pair)
        {
            Means = "names and what is said of them, as a calm grid",
            Gives = typeof(Pairs),
            Example = """
                <dl data-columns="2">
                  <dt>Stands</dt><dd>USL</dd>
                  <dt>Loop at inlet</dt><dd data-verdict="cannot-be-judged">not known</dd>
                </dl>
                """,
            Attributes = [Id, new("data-columns", Values.Whole(1, 4), "how many columns at most; default 1")],
        },
        new("dt", null, Content.Pair, Sentence) { Means = "a name; what is said of it follows", Gives = typeof(Pair) },
        new("dd", null, Content.Pair, Sentence)
        {
            Means = "what is said of the name before it",
            Gives = typeof(Pair),
            Attributes = [new("data-verdict", Values.OneOf(typeof(Verdict)), "how it fared when it was judged; a printed cell says so by itself")],
        },
        new("hr", null, Content.Block, Content.None) { Means = "a hairline", Gives = typeof(Rule), Example = "<hr/>", Attributes = [Id] },
        new("hr", "page-break", Content.Block, Content.None)
        {
            Means = "what follows begins on a new page",
            Gives = typeof(PageBreak),
            Example = "<hr class=\"page-break\"/>",
            Attributes = [Id],
        },
    ];

    private static Form Heading(string name, string means, string example) => new(name, null, Content.Block, Sentence)
    {
        Means = means,
        Gives = typeof(Heading),
        Example = example,
        Attributes = [Id],
    };
}
