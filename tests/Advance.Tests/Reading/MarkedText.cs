using Advance.Domain.Facts;

namespace Advance.Tests.Reading;

/// <summary>A text in which « and » stand around what a caret must underline.</summary>
internal sealed record MarkedText(string Text, IReadOnlyList<Mark> Marks)
{
    public static MarkedText Of(string marked, string file = "gig.yaml")
    {
        var marks = new List<Mark>();
        var text = new System.Text.StringBuilder();
        var (line, column) = (1, 1);
        var opened = Mark.Nowhere;
        foreach (var one in marked)
        {
            if (one == '«')
            {
                opened = new(file, line, column);
            }
            else if (one == '»')
            {
                marks.Add(opened with { Length = Math.Max(1, column - opened.Column) });
            }
            else
            {
                text.Append(one);
                (line, column) = one == '\n' ? (line + 1, 1) : (line, column + 1);
            }
        }

        return new(text.ToString(), marks);
    }
}
