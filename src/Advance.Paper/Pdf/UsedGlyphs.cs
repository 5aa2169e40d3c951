using System.Text;
using Advance.Paper.Layout;
using Advance.Paper.Setting;

namespace Advance.Paper.Pdf;

/// <summary>Finds which glyphs of which fonts are drawn, and which letter each one stands for.</summary>
internal sealed class UsedGlyphs
{
    private readonly Dictionary<Face, Dictionary<ushort, int>> glyphs = [];
    private readonly HashSet<ShapedWord> seen = new(ReferenceEqualityComparer.Instance);

    /// <summary>For each glyph of a font that is drawn its letter; 0 for one that alone stands for none.</summary>
    public IReadOnlyDictionary<ushort, int> Of(Face face) => glyphs[face];

    public void Add(IReadOnlyList<Mark> marks)
    {
        foreach (var mark in marks)
        {
            if (mark is RunMark run)
            {
                foreach (var placed in run.Words)
                {
                    Add(placed.Word);
                }
            }
            else if (mark is PictureMark picture)
            {
                Add(picture.Picture.Marks);
            }
        }
    }

    public void Add(ShapedWord word)
    {
        if (!seen.Add(word))
        {
            return;
        }

        foreach (var run in word.Runs)
        {
            if (!glyphs.TryGetValue(run.Face, out var used))
            {
                glyphs[run.Face] = used = new Dictionary<ushort, int> { [run.Face.SpaceGlyph] = ' ' };
            }

            for (var i = 0; i < run.Glyphs.Length; i++)
            {
                if (used.GetValueOrDefault(run.Glyphs[i]) == 0)
                {
                    used[run.Glyphs[i]] = Letter(word, run, i);
                }
            }
        }
    }

    /// <summary>The letter of a glyph that stands for just one; 0 where several stand together.</summary>
    private static int Letter(ShapedWord word, ShapedRun run, int index)
    {
        var start = run.Clusters[index];
        for (var i = 0; i < run.Clusters.Length; i++)
        {
            if (i != index && run.Clusters[i] == start)
            {
                return 0;
            }
        }

        Rune.DecodeFromUtf8(word.Utf8.AsSpan((int)start), out var rune, out var length);
        foreach (var other in word.Runs)
        {
            foreach (var next in other.Clusters)
            {
                if (next > start && next < start + length)
                {
                    return 0;
                }
            }
        }

        return IsWhole(word, (int)start + length) ? rune.Value : 0;
    }

    /// <summary>True when a glyph begins at this place of the word, or it ends there.</summary>
    private static bool IsWhole(ShapedWord word, int end)
    {
        if (end == word.Utf8.Length)
        {
            return true;
        }

        foreach (var run in word.Runs)
        {
            foreach (var cluster in run.Clusters)
            {
                if (cluster == end)
                {
                    return true;
                }
            }
        }

        return false;
    }
}

