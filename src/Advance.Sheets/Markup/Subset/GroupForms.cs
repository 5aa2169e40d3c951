using Advance.Paper.Tree;

namespace Advance.Sheets.Markup.Subset;

/// <summary>The elements that hold blocks, sentences or pictures.</summary>
internal static class GroupForms
{
    public static IReadOnlyList<Form> All { get; } =
    [
        new("div", "columns", Content.Block, Content.Part)
        {
            Means = "blocks side by side",
            Gives = typeof(Columns),
            Example = "<div class=\"columns\"><div data-share=\"2\"><p>Left</p></div><div><p>Right</p></div></div>",
            Attributes = [BlockForms.Id],
        },
        new("div", null, Content.Part, Content.Block)
        {
            Means = "one of the blocks side by side",
            Gives = typeof(ColumnsPart),
            Attributes = [new("data-share", Values.Over0, "its share of the width; default 1")],
        },
        new("div", "keep", Content.Block, Content.Block)
        {
            Means = "blocks that stand on one page if they fit on one",
            Gives = typeof(KeepTogether),
            Example = "<div class=\"keep\"><p>Tested by <span class=\"write\"/></p><p>Energised by <span class=\"write\"/></p></div>",
            Attributes = [BlockForms.Id],
        },
        new("div", "space", Content.Block, Content.None)
        {
            Means = "empty room",
            Gives = typeof(Space),
            Example = "<div class=\"space\" data-mm=\"5\"/>",
            Attributes = [BlockForms.Id, new("data-mm", Values.From0, "its height in mm") { IsRequired = true }],
        },
        new("div", "alongside", Content.Block, Content.Level)
        {
            Means = "a picture and a table whose rows stand level with what they tell about",
            Gives = typeof(Alongside),
            Example = """
                <div class="alongside" data-share="0.3">
                  <figure data-drawing="example"/>
                  <table>
                    <colgroup><col data-key="unit"/></colgroup>
                    <thead><tr><th>Unit</th></tr></thead>
                    <tbody><tr data-top="0" data-bottom="500"><td>L1</td></tr></tbody>
                  </table>
                </div>
                """,
            Attributes = [BlockForms.Id, new("data-share", Values.Share, "the picture's share of the width; default 0.38")],
        },
        new("figure", null, Content.Block | Content.Level, Content.PictureCaption)
        {
            Means = "a drawing",
            Gives = typeof(Picture),
            Example = "<figure data-drawing=\"example\" data-most-mm=\"80\"><figcaption>Seen from the audience</figcaption></figure>",
            TakesMore = true,
            Attributes =
            [
                BlockForms.Id,
                new("data-drawing", Values.SomeText, "which drawing; further `data-` attributes tell it more") { IsRequired = true },
                new("data-most-mm", Values.Over0, "no taller than this, in mm; default the room on a page"),
            ],
        },
        new("figcaption", null, Content.PictureCaption, Content.Text | Content.Line)
        {
            Means = "set under a drawing",
            Gives = typeof(Picture),
        },
        Aside(
            "danger",
            typeof(Caution),
            "people will be killed or badly hurt: what can happen, what to do, who decides (may be left out)",
            "<p>Shock.</p><p>Dead test first.</p><p>A licensed electrician decides.</p>"),
        Aside(
            "warning",
            typeof(Caution),
            "people can be killed or badly hurt: the same sentences",
            "<p>It tips in wind.</p><p>Take it down at 10 m/s.</p><p>The rigger decides.</p>"),
        Aside("caution", typeof(Caution), "people can be hurt: the same sentences", "<p>It weighs 48 kg.</p><p>Lift it in twos.</p>"),
        Aside(
            "stop",
            typeof(Remark),
            "not to be issued like this: what was found, then quietly its source and cure (may be left out)",
            "<p>26 of 32 A are gone already.</p><p>Use service B.</p>"),
        Aside("concern", typeof(Remark), "to be thought about: the same sentences", "<p>Two spare lines.</p>"),
        Aside("note", typeof(Remark), "good to know: the same sentences", "<p>The key is with the caretaker.</p>"),
    ];

    private static Form Aside(string word, Type gives, string means, string sentences) => new("aside", word, Content.Block, Content.Sentence)
    {
        Means = means,
        Gives = gives,
        Example = $"<aside class=\"{word}\">{sentences}</aside>",
        Attributes = [BlockForms.Id],
    };
}
