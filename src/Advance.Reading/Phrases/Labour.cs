using Advance.Domain.Companies;

namespace Advance.Reading.Phrases;

/// <summary>Notations of policies: how long something takes with how many hands, and one for so many.</summary>
internal static class Labour
{
    /// <summary>How long, and with how many hands.</summary>
    public static readonly Phrase<Work> Work = new(
        "work", "a length of time and hands", $@"{Durations.Duration.Pattern}\s+{Patterns.Times}\s*{Patterns.Whole}", ["25 min x 3", "20 s x 1", "1 h 15 min x 8"], ReadWork);

    /// <summary>One for so many begun, and from how many on.</summary>
    public static readonly Phrase<OnePer> OnePer = new(
        "one-per", "one for so many", $@"0{{0,8}}1\s+per\s+{Patterns.Whole}(?:\s+over\s+{Patterns.Whole})?", ["1 per 6", "1 per 8 over 3"], ReadOnePer);

    private static bool ReadWork(Cursor cursor, out Work value)
    {
        value = default;
        if (!Durations.Read(cursor, out var time))
        {
            return false;
        }

        if (!cursor.SkipSpaces() || !cursor.Take('x'))
        {
            return false;
        }

        cursor.SkipSpaces();
        var at = cursor.At;
        if (!cursor.Whole(out var hands))
        {
            return false;
        }

        value = new(time, hands);
        return hands > 0 || cursor.Fail(PhraseFaults.OutOfRange(at, "0", "1 and more"));
    }

    private static bool ReadOnePer(Cursor cursor, out OnePer value)
    {
        value = default;
        cursor.SkipSpaces();
        if (!cursor.Whole(out var one) || one != 1 || !cursor.TakeWord("per") || !cursor.SkipSpaces())
        {
            return false;
        }

        var at = cursor.At;
        if (!cursor.Whole(out var each))
        {
            return false;
        }

        var over = 0;
        if (cursor.TakeWord("over") && (!cursor.SkipSpaces() || !cursor.Whole(out over)))
        {
            return false;
        }

        value = new(each, over);
        return each > 0 || cursor.Fail(PhraseFaults.OutOfRange(at, "0", "1 and more"));
    }
}
