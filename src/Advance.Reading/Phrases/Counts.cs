using System.Globalization;
using Advance.Domain.Facts;

namespace Advance.Reading.Phrases;

/// <summary>Numbers without a unit: how many, which ones, a factor.</summary>
internal static class Counts
{
    /// <summary>How many, from 0.</summary>
    public static readonly Phrase<int> Count = new("count", "a whole number", Patterns.Whole, ["5", "0", "120"], (Cursor cursor, out int value) =>
    {
        cursor.SkipSpaces();
        return cursor.Whole(out value);
    });

    /// <summary>A power factor, over 0 to 1: nothing draws current without any power for ever.</summary>
    public static readonly Phrase<double> PowerFactor = new(
        "power-factor", "a number over 0, to 1", @"(?:0{0,12}\.(?=[0-9]*[1-9])[0-9]{1,12}|0{0,11}1(?:\.0{1,12})?)", ["0.95", "1", ".6"], (Cursor cursor, out double value) =>
        {
            cursor.SkipSpaces();
            return cursor.Number(out value) && value is > 0 and <= 1;
        });

    /// <summary>A factor, over 0.</summary>
    public static readonly Phrase<double> Factor = new(
        "factor", "a number over 0", $"(?=[0-9.]*[1-9]){Patterns.Number}", ["1.4", "0.35", "2"], (Cursor cursor, out double value) =>
        {
            cursor.SkipSpaces();
            return cursor.Number(out value) && value > 0;
        });

    /// <summary>One number or several in a row, from 1.</summary>
    public static readonly Phrase<NumberRange> Range = new(
        "number-range", "a number or a range of numbers", $@"{Patterns.Whole}(?:(?:\s*{Patterns.Minus}\s*|\s+to\s+){Patterns.Whole})?", ["7", "10-11", "1 to 8"], ReadRange);

    /// <summary>A whole number within limits.</summary>
    public static Phrase<int> Between(string name, int least, int most)
    {
        var range = string.Create(CultureInfo.InvariantCulture, $"{least} to {most}");
        return new(name, $"a whole number, {range}", WholeNumbers.Between(least, most), [least.ToString(CultureInfo.InvariantCulture)], (Cursor cursor, out int value) =>
        {
            cursor.SkipSpaces();
            var start = cursor.At;
            return cursor.Whole(out value)
                && ((value >= least && value <= most) || cursor.Fail(PhraseFaults.OutOfRange(start, cursor.Written(start, cursor.At), range)));
        }, takes: $"a whole number, {range}");
    }

    /// <summary>Reads a number or a range.</summary>
    public static bool ReadRange(Cursor cursor, out NumberRange range)
    {
        range = default;
        cursor.SkipSpaces();
        var start = cursor.At;
        if (!cursor.Whole(out var first))
        {
            return false;
        }

        var last = first;
        var after = cursor.At;
        cursor.SkipSpaces();
        if (cursor.Take('-') || (cursor.TakeWord("to") && cursor.SkipSpaces()))
        {
            cursor.SkipSpaces();
            if (!cursor.Whole(out last))
            {
                return false;
            }
        }
        else
        {
            cursor.At = after;
        }

        if (first == 0)
        {
            return cursor.Fail(PhraseFaults.OutOfRange(start, "0", "1 and more"));
        }

        range = new(first, last);
        return last >= first || cursor.Fail(PhraseFaults.Backwards(start, cursor.Written(start, cursor.At)));
    }
}
