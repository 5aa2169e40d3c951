using Advance.Paper.Tree;

namespace Advance.Sheets.Markup.Subset;

/// <summary>The elements that stand in a line of text.</summary>
internal static class LineForms
{
    private const Content Sentence = Content.Text | Content.Line;

    private static readonly AttributeRule[] NumberAttributes =
    [
        new("value", Values.AnyNumber, "the number as a machine reads it") { IsRequired = true },
        new("data-unit", Values.Text, "its unit, when it is not that of the column"),
    ];

    public static IReadOnlyList<Form> All { get; } =
    [
        new("strong", null, Content.Line, Sentence) { Means = "bold", Gives = typeof(Text), Example = "<strong>USL</strong>" },
        new("small", null, Content.Line, Sentence) { Means = "small and quiet", Gives = typeof(Text), Example = "<small>2.5 mm²</small>" },
        new("span", "large", Content.Line, Sentence) { Means = "large", Gives = typeof(Text), Example = "<span class=\"large\">20:45</span>" },
        new("br", null, Content.Line, Content.None) { Means = "a new line", Gives = typeof(LineBreak), Example = "<br/>" },
        new("a", null, Content.Line, Sentence)
        {
            Means = "a link",
            Gives = typeof(Link),
            Example = "<a href=\"#day-sheet\">the day sheet</a>",
            Attributes = [new("href", Values.SomeText, "`#` and an id, or an address with http, https, mailto or tel") { IsRequired = true }],
        },
        new("a", "page", Content.Line, Content.None)
        {
            Means = "the number of the page on which an id stands",
            Gives = typeof(PageOf),
            Example = "<a class=\"page\" href=\"#day-sheet\"/>",
            Attributes = [new("href", Values.PageLink, "whose page") { IsRequired = true }],
        },
        new("data", null, Content.Line, Content.Text)
        {
            Means = "a number: text for people, a value for the workbook",
            Gives = typeof(NumberValue),
            Example = "<data value=\"25.4\" data-decimals=\"1\">25.4</data>",
            Attributes =
            [
                .. NumberAttributes,
                new("data-decimals", Values.Whole(0, 9), "digits after the decimal sign in the workbook; default as many as there are"),
            ],
        },
        new("data", "sum", Content.Line, Content.Text)
        {
            Means = "the sum of the numbers above in the same column",
            Gives = typeof(SumValue),
            Example = "<data class=\"sum\" value=\"25.4\">25.4</data>",
            Attributes = NumberAttributes,
        },
        new("time", null, Content.Line, Content.Text)
        {
            Means = "a date, a time of day, or both",
            Gives = typeof(Datum),
            Example = "<time datetime=\"2026-09-12\">Sat 12 Sep</time>",
            Attributes = [new("datetime", Values.Time, "as a machine reads it") { IsRequired = true }],
        },
        new("mark", null, Content.Line, Content.Text)
        {
            Means = "a few words in a small outline",
            Gives = typeof(Tag),
            Example = "<mark class=\"tbc\">TBC caretaker</mark>",
            Words = [new("tbc", "an open question; a printed cell writes it by itself")],
        },
        new("input", null, Content.Line | Content.Tick, Content.None)
        {
            Means = "a box to tick",
            Gives = typeof(TickBox),
            Example = "<input type=\"checkbox\"/>",
            Attributes = [new("type", Values.OneOf("checkbox"), "a box to tick") { IsRequired = true }],
        },
        new("label", null, Content.Line, Content.Text | Content.Tick)
        {
            Means = "a box to tick with what is ticked after it",
            Gives = typeof(TickBox),
            Example = "<label><input type=\"checkbox\"/> tested</label>",
        },
        new("span", "write", Content.Line, Content.None)
        {
            Means = "a line to write on",
            Gives = typeof(WriteIn),
            Example = "<span class=\"write\" data-mm=\"30\"/>",
            Attributes = [new("data-mm", Values.Over0, "no shorter than this, in mm; default 12")],
        },
        new("span", "judged", Content.Line, Sentence)
        {
            Means = "how a value fared when it was judged: marks the whole field it stands in, and has a tag after it where it stands in none",
            Gives = typeof(Tag),
            Example = "<span class=\"judged\" data-verdict=\"fails\">26 A</span>",
            Attributes = [new("data-verdict", Values.OneOf(typeof(Verdict)), "the outcome") { IsRequired = true }],
        },
        new("meter", null, Content.Line, Content.None)
        {
            Means = "a bar that shows how much of a limit is used",
            Gives = typeof(Bar),
            Example = "<meter value=\"0.79\" high=\"0.8\"/>",
            Attributes =
            [
                new("value", Values.From0, "the used part of the limit; over 1 is over the limit") { IsRequired = true },
                new("high", Values.Mark, "where the mark of one's own policy stands; default none"),
            ],
        },
    ];
}
