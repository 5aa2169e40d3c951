using Advance.Paper.Layout;
using Advance.Paper.Tree;

namespace Advance.Paper.Setting;

/// <summary>A text broken into lines, ready to be placed.</summary>
internal sealed class SetLines
{
    private const int Hairline = 500;

    private readonly Atom[] atoms;
    private readonly List<SetLine> lines;

    public SetLines(Atom[] atoms, List<SetLine> lines)
    {
        this.atoms = atoms;
        this.lines = lines;
        foreach (var line in lines)
        {
            Height += Measure(line).Height;
        }
    }

    public static SetLines Empty { get; } = new([], []);

    public int Count => lines.Count;

    /// <summary>Height of all lines in 1/1000 pt.</summary>
    public int Height { get; }

    /// <summary>From the top to the first base line, in 1/1000 pt; 0 without lines.</summary>
    public int Baseline => lines.Count == 0 ? 0 : Measure(lines[0]).Baseline;

    /// <summary>Draws the lines.</summary>
    /// <param name="marks">Taken up there.</param>
    /// <param name="x">Left edge of the room.</param>
    /// <param name="y">Upper edge of the first line.</param>
    /// <param name="width">Width of the room.</param>
    /// <param name="align">Which edge of the room the lines keep to.</param>
    public void Draw(List<Mark> marks, int x, int y, int width, Align align)
    {
        foreach (var line in lines)
        {
            var (height, baseline) = Measure(line);
            var writing = Writing(line, width);
            var slack = writing.Count > 0 ? 0 : width - line.Width;
            var left = align switch { Align.Right => x + slack, Align.Centre => x + (slack / 2), _ => x };
            DrawLine(marks, line, left, y + baseline, writing, width);
            y += height;
        }
    }

    /// <summary>Draws one line at the top of a strip of its own; answers its height.</summary>
    public int DrawOne(List<Mark> marks, int index, int width, Align align)
    {
        new SetLines(atoms, [lines[index]]).Draw(marks, 0, 0, width, align);
        return Measure(lines[index]).Height;
    }

    private (int Height, int Baseline) Measure(SetLine line)
    {
        if (atoms[line.Start].Box is AtomBox.Gauge)
        {
            return (6000, 5000);
        }

        var size = 0;
        for (var i = line.Start; i < line.Start + line.Count; i++)
        {
            size = Math.Max(size, atoms[i].Style.Size);
        }

        return (TypeScale.Leading(size), TypeScale.Baseline(size));
    }

    private (int Count, int Each) Writing(SetLine line, int width)
    {
        var count = 0;
        for (var i = line.Start; i < line.Start + line.Count; i++)
        {
            if (atoms[i].Box is AtomBox.Write)
            {
                count++;
            }
        }

        return (count, count == 0 ? 0 : Math.Max(0, width - line.Width) / count);
    }

    private void DrawLine(List<Mark> marks, SetLine line, int x, int baseline, (int Count, int Each) writing, int room)
    {
        var order = VisualOrder(line);
        for (var i = 0; i < line.Count;)
        {
            var index = order?[i] ?? (line.Start + i);
            ref readonly var atom = ref atoms[index];
            if (i > 0)
            {
                x += atom.Space;
            }

            if (atom.Word is not null)
            {
                i += DrawRun(marks, line, order, i, ref x, baseline);
                continue;
            }

            var width = atom.Box switch
            {
                AtomBox.Write => atom.Width + writing.Each,
                AtomBox.Gauge => room,
                _ => atom.Width,
            };
            AtomBoxes.Draw(marks, atom, x, baseline, width, Hairline);
            if (atom.Link is { } link)
            {
                marks.Add(new LinkMark(x, baseline - atom.Style.Size, width, TypeScale.Leading(atom.Style.Size), link));
            }

            x += width;
            i++;
        }
    }

    /// <summary>Draws words of one style and link as one run; answers how many.</summary>
    private int DrawRun(List<Mark> marks, SetLine line, int[]? order, int from, ref int x, int baseline)
    {
        var first = atoms[order?[from] ?? (line.Start + from)];
        var count = 1;
        while (from + count < line.Count && Goes(atoms[order?[from + count] ?? (line.Start + from + count)], first))
        {
            count++;
        }

        var words = new PlacedWord[count];
        var at = 0;
        for (var i = 0; i < count; i++)
        {
            ref readonly var atom = ref atoms[order?[from + i] ?? (line.Start + from + i)];
            if (i > 0)
            {
                at += atom.Space;
            }

            words[i] = new PlacedWord(atom.Word!, at, i > 0 && atom.Space > 0);
            at += atom.Width;
        }

        marks.Add(new RunMark(x, baseline, first.Style, words, at));
        if (first.Link is { } link)
        {
            marks.Add(new LinkMark(x, baseline - first.Style.Size, at, TypeScale.Leading(first.Style.Size), link));
        }

        x += at;
        return count;

        static bool Goes(in Atom atom, in Atom first) =>
            atom.Word is not null && atom.Style == first.Style && ReferenceEquals(atom.Link, first.Link);
    }

    /// <summary>Words of right-to-left scripts that follow each other stand in turned order; null when there are none.</summary>
    private int[]? VisualOrder(SetLine line)
    {
        int[]? order = null;
        for (var i = 0; i < line.Count; i++)
        {
            var run = 0;
            while (i + run < line.Count && atoms[line.Start + i + run].Word is { IsRightToLeft: true })
            {
                run++;
            }

            if (run < 2)
            {
                continue;
            }

            order ??= [.. Enumerable.Range(line.Start, line.Count)];
            Array.Reverse(order, i, run);
            i += run;
        }

        return order;
    }
}
