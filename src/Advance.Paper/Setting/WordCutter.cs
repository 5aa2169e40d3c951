using System.Globalization;

namespace Advance.Paper.Setting;

/// <summary>Cuts words that are wider than a line, as the last resort.</summary>
internal static class WordCutter
{
    /// <summary>Atoms none of which is wider than the width, and no glued row of which is, as far as letters allow.</summary>
    public static Atom[] Cut(Atom[] atoms, int width, Shaper shaper)
    {
        var cut = new List<Atom>(atoms.Length + 8);
        var glued = 0;
        foreach (var atom in atoms)
        {
            glued = atom.Break == LineStart.Never ? glued + atom.Space + atom.Width : atom.Width;
            if (atom.Width > width && atom.Word is { } word)
            {
                CutWord(atom, word, width, shaper, cut);
                glued = cut[^1].Width;
            }
            else if (glued > width && cut.Count > 0)
            {
                cut.Add(atom with { Break = LineStart.Allowed });
                glued = atom.Width;
            }
            else
            {
                cut.Add(atom);
            }
        }

        return [.. cut];
    }

    private static void CutWord(Atom atom, ShapedWord word, int width, Shaper shaper, List<Atom> cut)
    {
        var rest = word.Text.AsSpan();
        var next = atom with { Break = cut.Count == 0 || atom.Break == LineStart.Always ? atom.Break : LineStart.Allowed };
        while (rest.Length > 0)
        {
            var part = LongestThatFits(rest, atom.Style, width, shaper);
            cut.Add(next with { Word = part, Width = part.Width(atom.Style.Size) });
            rest = rest[part.Text.Length..];
            next = atom with { Space = 0, Break = LineStart.Allowed };
        }
    }

    private static ShapedWord LongestThatFits(ReadOnlySpan<char> text, TypeStyle style, int width, Shaper shaper)
    {
        var length = StringInfo.GetNextTextElementLength(text);
        var best = shaper.Shape(text[..length], style.IsStrong);
        while (length < text.Length)
        {
            length += StringInfo.GetNextTextElementLength(text[length..]);
            var longer = shaper.Shape(text[..length], style.IsStrong);
            if (longer.Width(style.Size) > width)
            {
                break;
            }

            best = longer;
        }

        return best;
    }
}
