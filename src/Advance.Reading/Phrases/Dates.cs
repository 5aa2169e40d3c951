using System.Buffers;
using Advance.Domain.Facts;

namespace Advance.Reading.Phrases;

/// <summary>Dates with the month as a word. The weekday is kept as written; a rule checks it.</summary>
internal static class Dates
{
    private static readonly string[] Months =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    private static readonly string[] Weekdays = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

    private static readonly SearchValues<char> Figures = SearchValues.Create("0123456789-/.");

    /// <summary>The pattern of a date.</summary>
    public static readonly string Pattern = $@"(?:{Either(Weekdays)},?\s+)?[0-9]{{1,2}}\s+{Either(Months)}(?:\s+[12][0-9]{{3}})?";

    public static readonly Phrase<WrittenDate> Date = new("date", "a date", Pattern, ["Sat 12 Sep 2026", "12 September 2026", "Fri 4 Sep", "Saturday, 12 Sep"], Read);

    /// <summary>Reads a date.</summary>
    public static bool Read(Cursor cursor, out WrittenDate date)
    {
        date = default;
        cursor.SkipSpaces();
        var start = cursor.At;
        var weekday = ReadName(cursor, Weekdays);
        if (weekday >= 0)
        {
            cursor.Take(',');
            if (!cursor.SkipSpaces())
            {
                return false;
            }
        }

        if (IsMonthFirst(cursor, start) || IsAllFigures(cursor))
        {
            return false;
        }

        var dayAt = cursor.At;
        if (!cursor.Whole(out var day) || cursor.At - dayAt > 2 || !cursor.SkipSpaces() || ReadName(cursor, Months) is not (>= 0 and var month))
        {
            return false;
        }

        var year = ReadYear(cursor);
        var days = DateTime.DaysInMonth(year ?? 2024, month + 1);
        if (day < 1 || day > days)
        {
            return cursor.Fail(PhraseFaults.NoSuchDay(dayAt, $"{day}", year is null ? Months[month] : $"{Months[month]} {year}"));
        }

        date = new(weekday < 0 ? null : (DayOfWeek)weekday, day, month + 1, year);
        return true;
    }

    /// <summary>Whether a word names a weekday or a month.</summary>
    public static bool IsName(ReadOnlySpan<char> word)
    {
        foreach (var name in (ReadOnlySpan<string[]>)[Weekdays, Months])
        {
            foreach (var one in name)
            {
                if (IsNameFor(word, one))
                {
                    return true;
                }
            }
        }

        return false;
    }

    // Whole names, their first three letters, and Sept; in any case of letters.
    private static int ReadName(Cursor cursor, string[] names)
    {
        var word = cursor.PeekWord();
        for (var index = 0; index < names.Length; index++)
        {
            if (IsNameFor(word, names[index]))
            {
                cursor.At += word.Length;
                return index;
            }
        }

        return -1;
    }

    private static bool IsNameFor(ReadOnlySpan<char> word, string name) =>
        word.Equals(name, StringComparison.OrdinalIgnoreCase)
        || word.Equals(name.AsSpan(0, 3), StringComparison.OrdinalIgnoreCase)
        || (word.Length == 4 && word.Equals("Sept", StringComparison.OrdinalIgnoreCase) && name == "September");

    private static int? ReadYear(Cursor cursor)
    {
        var from = cursor.At;
        if (cursor.SkipSpaces() && cursor.PeekWord() is { Length: 4 } word && word[0] is '1' or '2' && cursor.Whole(out var year) && year is >= 1000 and <= 2999)
        {
            return year;
        }

        cursor.At = from;
        return null;
    }

    private static bool IsMonthFirst(Cursor cursor, int start)
    {
        var at = cursor.At;
        if (ReadName(cursor, Months) is not (>= 0 and var month))
        {
            return false;
        }

        if (cursor.SkipSpaces() && cursor.Whole(out var day) && day is >= 1 and <= 31)
        {
            cursor.Take(',');
            cursor.SkipSpaces();
            var year = cursor.PeekWord().ToString();
            cursor.Fail(PhraseFaults.DayFirst(start, cursor.Written(start, cursor.Text.Length), $"{day} {Months[month][..3]} {year}".TrimEnd()));
        }

        cursor.At = at;
        return true;
    }

    private static bool IsAllFigures(Cursor cursor)
    {
        var word = cursor.PeekWord();
        var isFigures = word.Length >= 5 && word.IndexOfAnyExcept(Figures) < 0 && word.IndexOfAny("-/.") > 0;
        if (isFigures)
        {
            cursor.Fail(PhraseFaults.AllFigures(cursor.At, word.ToString()));
        }

        return isFigures;
    }

    private static string Either(string[] names) =>
        $"(?:{string.Join('|', names.Select(name => $"{AnyCase(name[..3])}{(name == "September" ? "(?:[Tt]|[Tt][Ee][Mm][Bb][Ee][Rr])?" : name.Length > 3 ? $"(?:{AnyCase(name[3..])})?" : "")}"))})";

    private static string AnyCase(string word) => string.Concat(word.Select(one => $"[{char.ToUpperInvariant(one)}{char.ToLowerInvariant(one)}]"));
}
