using Advance.Domain.Naming;
using Advance.Domain.Places;

namespace Advance.Reading.Phrases;

/// <summary>Edges of a stage.</summary>
internal static class Edges
{
    private const string Nothing = "none";

    private static readonly string Word = Patterns.AnyOf(StageEdgeWords.All.Select(named => named.Word));

    /// <summary>Some of the edges, or none.</summary>
    public static readonly Phrase<StageEdges> Of = new(
        "stage-edges",
        "edges of a stage",
        $@"(?:{Nothing}|{Word}(?:(?:\s*,\s*|\s+){Word})*)",
        ["rear, SR, SL", "none", "rear", "front SR SL"],
        Read);

    private static bool Read(Cursor cursor, out StageEdges edges)
    {
        edges = StageEdges.None;
        cursor.SkipSpaces();
        if (cursor.TakeWord(Nothing))
        {
            return true;
        }

        do
        {
            cursor.SkipSpaces();
            if (!ReadOne(cursor, ref edges))
            {
                return false;
            }
        }
        while (TakeSeparator(cursor));

        return true;
    }

    private static bool ReadOne(Cursor cursor, ref StageEdges edges)
    {
        var word = cursor.PeekWord().ToString();
        var words = StageEdgeWords.All.Select(named => named.Word).ToList();
        var index = words.IndexOf(word);
        if (index < 0)
        {
            return word.Length > 0 && cursor.Fail(PhraseFaults.NotAWord(cursor.At, word, string.Join(", ", words), Nearest.To(word, words)));
        }

        var edge = StageEdgeWords.All[index].Edge;
        if (edges.HasFlag(edge))
        {
            return cursor.Fail(PhraseFaults.Twice(cursor.At, word));
        }

        edges |= edge;
        cursor.At += word.Length;
        return true;
    }

    private static bool TakeSeparator(Cursor cursor)
    {
        var isParted = cursor.SkipSpaces();
        return cursor.Take(',') || (isParted && !cursor.IsAtEnd);
    }
}
