namespace Advance.Sheets.Markup.Subset;

/// <summary>Kinds of contents: what an element is, and what it can hold.</summary>
[Flags]
internal enum Content
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Sheets; only a whole template holds them.</summary>
    Sheet = 1,

    /// <summary>Pieces that take the whole width.</summary>
    Block = 1 << 1,

    /// <summary>Text.</summary>
    Text = 1 << 2,

    /// <summary>Pieces of a line.</summary>
    Line = 1 << 3,

    /// <summary>Items of a list.</summary>
    Item = 1 << 4,

    /// <summary>Names and what is said of them.</summary>
    Pair = 1 << 5,

    /// <summary>Parts that stand side by side.</summary>
    Part = 1 << 6,

    /// <summary>Sentences of a caution or a remark.</summary>
    Sentence = 1 << 7,

    /// <summary>A picture or a table that stand level with each other.</summary>
    Level = 1 << 8,

    /// <summary>What a picture says.</summary>
    PictureCaption = 1 << 9,

    /// <summary>Head, body and foot of a table.</summary>
    TablePart = 1 << 10,

    /// <summary>Columns of a table.</summary>
    Column = 1 << 11,

    /// <summary>Rows of a table.</summary>
    Row = 1 << 12,

    /// <summary>Fields of a row.</summary>
    Field = 1 << 13,

    /// <summary>A box to tick.</summary>
    Tick = 1 << 14,
}
