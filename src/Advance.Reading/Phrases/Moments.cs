using Advance.Domain.Facts;

namespace Advance.Reading.Phrases;

/// <summary>Times of the day, spans between two of them, and times with a length. All in 24 hours.</summary>
internal static class Moments
{
    private const string Time = @"(?:[01]?[0-9]|2[0-3]):[0-5][0-9](?:\s*\+\s*1)?";

    /// <summary>A time; +1 after midnight.</summary>
    public static readonly Phrase<Moment> Moment = new("time", "a time", Time, ["19:30", "9:05", "00:30 +1"], Read);

    /// <summary>From one time to another.</summary>
    public static readonly Phrase<MomentRange> Range = new(
        "time-range", "two times", $@"{Time}(?:\s*{Patterns.Minus}\s*|\s+to\s+){Time}", ["08:00-18:00", "22:00 to 07:00 +1"], ReadRange);

    /// <summary>A time and how long from then.</summary>
    public static readonly Phrase<SetTime> Set = new(
        "set-time", "a time and a length", $@"{Time}\s+for\s+{Durations.Duration.Pattern}", ["20:00 for 45 min", "23:30 for 1 h 15 min", "00:15 +1 for 30 min"], ReadSet);

    /// <summary>Reads a time.</summary>
    public static bool Read(Cursor cursor, out Moment moment)
    {
        moment = default;
        cursor.SkipSpaces();
        var start = cursor.At;
        if (!cursor.Whole(out var hour))
        {
            return false;
        }

        if (!cursor.Take(':') || !char.IsAsciiDigit(cursor.Now))
        {
            cursor.At = start;
            return FailAsOtherClock(cursor);
        }

        var minuteAt = cursor.At;
        if (!cursor.Whole(out var minute) || cursor.At - minuteAt != 2 || minuteAt - start > 3 || minute > 59 || hour > 23 || IsHalfDay(cursor))
        {
            cursor.At = start;
            return FailAsOtherClock(cursor);
        }

        moment = Domain.Facts.Moment.At(hour, minute, TakeNextDay(cursor));
        return true;
    }

    private static bool ReadRange(Cursor cursor, out MomentRange range)
    {
        range = default;
        cursor.SkipSpaces();
        var start = cursor.At;
        if (!Read(cursor, out var from))
        {
            return false;
        }

        cursor.SkipSpaces();
        if (!cursor.Take('-') && !(cursor.TakeWord("to") && cursor.SkipSpaces()))
        {
            return false;
        }

        if (!Read(cursor, out var to))
        {
            return false;
        }

        range = new(from, to);
        return to.Minutes > from.Minutes || cursor.Fail(PhraseFaults.Backwards(start, cursor.Written(start, cursor.At)));
    }

    private static bool ReadSet(Cursor cursor, out SetTime set)
    {
        set = default;
        if (!Read(cursor, out var start) || !cursor.TakeWord("for") || !cursor.SkipSpaces())
        {
            return false;
        }

        var at = cursor.At;
        if (!Durations.Read(cursor, out var length))
        {
            return false;
        }

        set = new(start, length);
        return length.Seconds > 0 || cursor.Fail(PhraseFaults.OutOfRange(at, cursor.Written(at, cursor.At), "more than nothing"));
    }

    private static bool TakeNextDay(Cursor cursor)
    {
        var from = cursor.At;
        cursor.SkipSpaces();
        if (cursor.Take('+'))
        {
            cursor.SkipSpaces();
            if (cursor.Take('1'))
            {
                return true;
            }
        }

        cursor.At = from;
        return false;
    }

    private static bool IsHalfDay(Cursor cursor)
    {
        var rest = cursor.Text.AsSpan(cursor.At).TrimStart(' ');
        return rest.StartsWith("am", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("pm", StringComparison.OrdinalIgnoreCase);
    }

    // Says how a time of another habit is written here: 7.30, 7:30 pm, 7 pm, 1930, 24:00.
    private static bool FailAsOtherClock(Cursor cursor)
    {
        var start = cursor.At;
        cursor.Whole(out var hour);
        var minute = 0;
        if (cursor.At - start is 3 or 4)
        {
            (hour, minute) = (hour / 100, hour % 100);
        }
        else if (cursor.Now is '.' or ':')
        {
            cursor.At++;
            cursor.Whole(out minute);
        }

        cursor.SkipSpaces();
        var word = cursor.PeekWord().ToString().ToLowerInvariant().Replace(".", "", StringComparison.Ordinal);
        cursor.At += word is "am" or "pm" ? cursor.PeekWord().Length : 0;
        hour = word switch { "pm" when hour < 12 => hour + 12, "am" when hour == 12 => 0, _ => hour };
        var time = cursor.Written(start, cursor.At);
        var right = hour > 24 || minute > 59 ? "it as in 19:30 or 00:30 +1" : hour == 24 ? $"00:{minute:00} +1" : $"{hour:00}:{minute:00}";
        return cursor.Fail(PhraseFaults.Clock(start, time, right));
    }
}
