using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;

namespace Advance.Reading.Phrases;

/// <summary>Notations that belong to the shop: weights with how they are known, packing, spares, crossovers.</summary>
internal static class Kit
{
    private static readonly (string Word, Known How)[] Ways = [("weighed", Known.Weighed), ("measured", Known.Weighed), ("maker", Known.Maker), ("estimated", Known.Estimated)];

    /// <summary>A weight, and whether it was weighed, is the maker's, or a guess.</summary>
    public static readonly Phrase<Weighed> Weighed = new(
        "known-weight",
        "a weight",
        $@"{Quantities.Weight.Pattern}(?:\s+{Patterns.AnyOf(Ways.Select(way => way.Word))})?",
        ["52 kg weighed", "12.5 kg maker", "3 kg estimated", "450 kg"],
        ReadWeighed);

    /// <summary>How many go into which case.</summary>
    public static readonly Phrase<CountedItem> Packs = new("packing", "how many in which case", $@"{Patterns.Whole}\s+in\s+{Patterns.Text}", ["8 in case-mic", "1 in wheel-board-sub"], ReadPacks);

    /// <summary>A share of a kind, and the least number.</summary>
    public static readonly Phrase<Share> Share = new(
        "share", "a share", $@"{Quantities.Ratio.Pattern}(?:\s+at\s+least\s+{Patterns.Whole})?", ["10 % at least 1", "15 %"], ReadShare);

    /// <summary>A frequency and the box or processor that parts there.</summary>
    public static readonly Phrase<Crossover> Crossover = new(
        "crossover", "a frequency and where it is set", $@"{Quantities.Frequency.Pattern}\s+in\s+{Patterns.Text}", ["100 Hz in sub-18", "1.2 kHz in DRIVE"], ReadCrossover);

    private static bool ReadWeighed(Cursor cursor, out Weighed value)
    {
        value = default;
        if (!Quantities.Weight.Scan(cursor, out var weight))
        {
            return false;
        }

        var how = Known.Stated;
        foreach (var (word, way) in Ways)
        {
            how = cursor.TakeWord(word) ? way : how;
        }

        value = new(weight, how);
        return true;
    }

    private static bool ReadPacks(Cursor cursor, [MaybeNullWhen(false)] out CountedItem value)
    {
        value = null;
        cursor.SkipSpaces();
        var start = cursor.At;
        if (!cursor.Whole(out var count) || !cursor.TakeWord("in"))
        {
            return false;
        }

        value = new(count, cursor.Written(cursor.At, cursor.Text.Length));
        cursor.At = cursor.Text.Length;
        return count > 0 ? value.Item.Length > 0 : cursor.Fail(PhraseFaults.OutOfRange(start, "0", "1 and more"));
    }

    private static bool ReadShare(Cursor cursor, out Share value)
    {
        value = default;
        if (!Quantities.Ratio.Scan(cursor, out var ratio))
        {
            return false;
        }

        var least = 0;
        if (cursor.TakeWord("at") && (!cursor.TakeWord("least") || !cursor.SkipSpaces() || !cursor.Whole(out least)))
        {
            return false;
        }

        value = new(ratio.Percent, least);
        return true;
    }

    private static bool ReadCrossover(Cursor cursor, out Crossover value)
    {
        value = default;
        if (!Quantities.Frequency.Scan(cursor, out var frequency) || !cursor.TakeWord("in"))
        {
            return false;
        }

        value = new(frequency, cursor.Written(cursor.At, cursor.Text.Length));
        cursor.At = cursor.Text.Length;
        return value.Within.Length > 0;
    }
}
