using Advance.Paper.Layout;

namespace Advance.Paper.Setting;

/// <summary>A composed text: knows how wide it must and would like to be, and breaks itself into lines.</summary>
internal sealed class SetText
{
    private readonly Atom[] atoms;
    private readonly Shaper? shaper;

    public SetText(Atom[] atoms, Shaper? shaper)
    {
        this.atoms = atoms;
        this.shaper = shaper;
        Measure();
    }

    public static SetText Empty { get; } = new([], null);

    public bool IsEmpty => atoms.Length == 0;

    /// <summary>False for what only has boxes.</summary>
    public bool HasWords => Array.Exists(atoms, a => a.Word is not null);

    /// <summary>Width of the widest part that is not parted, in 1/1000 pt.</summary>
    public int Least { get; private set; }

    /// <summary>Width of the widest line when nothing is wrapped, in 1/1000 pt.</summary>
    public int Most { get; private set; }

    /// <summary>Breaks the text into lines.</summary>
    /// <param name="width">No line is wider than this, in 1/1000 pt; words that are get broken anywhere.</param>
    public SetLines Fit(int width)
    {
        if (atoms.Length == 0)
        {
            return SetLines.Empty;
        }

        var fitting = Least <= width || shaper is null ? atoms : WordCutter.Cut(atoms, width, shaper);
        if (Array.Exists(fitting, atom => atom.Break == LineStart.InWord))
        {
            fitting = KeepWords([.. fitting], width);
        }

        var lines = new List<SetLine>();
        var start = 0;
        var used = fitting[0].Width;
        // Where the line could have ended last, and how wide it would be.
        var (mayEnd, widthThere) = (-1, 0);
        for (var i = 1; i < fitting.Length; i++)
        {
            ref readonly var atom = ref fitting[i];
            if (atom.Break == LineStart.Always)
            {
                lines.Add(new SetLine(start, i - start, used));
                (start, used, mayEnd) = (i, atom.Width, -1);
                continue;
            }

            if (atom.Break == LineStart.Allowed)
            {
                (mayEnd, widthThere) = (i, used);
            }

            used += atom.Space + atom.Width;
            if (used <= width || mayEnd < 0)
            {
                continue;
            }

            lines.Add(new SetLine(start, mayEnd - start, widthThere));
            used -= widthThere + fitting[mayEnd].Space;
            (start, mayEnd) = (mayEnd, -1);
        }

        lines.Add(new SetLine(start, fitting.Length - start, used));
        return new SetLines(fitting, lines);
    }

    /// <summary>All words on one line, as pictures have them.</summary>
    /// <param name="spread">Room between letters in 1/1000 pt; with it, each letter stands for itself.</param>
    /// <param name="width">What they take.</param>
    public PlacedWord[] OnOneLine(int spread, out int width)
    {
        var words = new List<PlacedWord>();
        width = 0;
        foreach (var atom in atoms)
        {
            if (atom.Word is not { } word)
            {
                continue;
            }

            var hasSpace = words.Count > 0 && (atom.Space > 0 || atom.Break == LineStart.Always);
            if (words.Count > 0)
            {
                width += atom.Space + spread;
            }

            if (spread == 0)
            {
                words.Add(new PlacedWord(word, width, hasSpace));
                width += atom.Width;
                continue;
            }

            var first = true;
            foreach (var letter in word.Text.EnumerateRunes())
            {
                var shaped = shaper!.Shape(letter.ToString(), atom.Style.IsStrong);
                width += first ? 0 : spread;
                words.Add(new PlacedWord(shaped, width, first && hasSpace));
                width += shaped.Width(atom.Style.Size);
                first = false;
            }
        }

        return [.. words];
    }

    /// <summary>Words with hyphens that find room on a line are not parted; others may be.</summary>
    private static Atom[] KeepWords(Atom[] fitting, int width)
    {
        var end = 0;
        for (var start = 0; start < fitting.Length; start = end)
        {
            var whole = fitting[start].Width;
            for (end = start + 1; end < fitting.Length && (fitting[end].Break is LineStart.InWord or LineStart.Never); end++)
            {
                whole += fitting[end].Space + fitting[end].Width;
            }

            for (var i = start + 1; i < end; i++)
            {
                if (fitting[i].Break == LineStart.InWord)
                {
                    fitting[i] = fitting[i] with { Break = whole <= width ? LineStart.Never : LineStart.Allowed };
                }
            }
        }

        return fitting;
    }

    private void Measure()
    {
        int part = 0, line = 0;
        foreach (var atom in atoms)
        {
            part = atom.Break == LineStart.Never ? part + atom.Space + atom.Width : atom.Width;
            line = atom.Break == LineStart.Always ? atom.Width : line + atom.Space + atom.Width;
            Least = Math.Max(Least, part);
            Most = Math.Max(Most, line);
        }
    }
}
