using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets cautions and remarks: a bar at the left, the word, and what is said.</summary>
internal static class WarningSetter
{
    private const int Bar = 6000;
    private const int ThinBar = 1500;
    private const int Indent = 15000;

    public static Strip Set(Block block, int width, Room room)
    {
        var composer = room.Composer;
        var lines = composer.Compose(Inlines(block, room.Words), composer.Body).Fit(width - Indent);
        var marks = new List<Mark>();
        var pad = composer.Body.Size / 10;
        var height = lines.Height + (2 * pad);
        var bar = block is Remark { Weight: RemarkWeight.Note } ? ThinBar : Bar;
        marks.Add(new BoxMark(0, 0, bar, height) { Fill = Shade.Ink });
        lines.Draw(marks, Indent, pad, width - Indent, Align.Left);
        return new Strip(height, marks) { IsWarning = true, IsAside = true };
    }

    /// <summary>What is said, word first; the three writers agree on it.</summary>
    public static List<Inline> Inlines(Block block, Wording words)
    {
        var inlines = new List<Inline>();
        if (Word(block, words) is { Length: > 0 } word)
        {
            inlines.AddRange(new Text(word, TextStyle.Strong), Space);
        }

        switch (block)
        {
            case Caution caution:
                inlines.AddRange(caution.Happens);
                inlines.Add(Space);
                inlines.AddRange(caution.Do);
                inlines.Add(Space);
                inlines.AddRange(caution.Decides);
                break;
            case Remark remark:
                inlines.AddRange(remark.Text);
                if (remark.Detail.Count > 0)
                {
                    inlines.Add(new LineBreak());
                }

                foreach (var inline in remark.Detail)
                {
                    inlines.Add(inline is Text { Style: TextStyle.Normal } text ? text with { Style = TextStyle.Quiet } : inline);
                }

                break;
        }

        return inlines;
    }

    private static readonly Text Space = new(" ");

    private static string Word(Block block, Wording words) => block switch
    {
        Caution { Signal: Signal.Danger } => words.Danger,
        Caution { Signal: Signal.Warning } => words.Warning,
        Caution => words.Caution,
        Remark { Weight: RemarkWeight.Stop } => words.Stop,
        Remark { Weight: RemarkWeight.Concern } => words.Concern,
        _ => "",
    };
}
