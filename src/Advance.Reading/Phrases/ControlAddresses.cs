using Advance.Domain.Gigs;

namespace Advance.Reading.Phrases;

/// <summary>Addresses of fixtures on lighting control.</summary>
internal static class ControlAddresses
{
    /// <summary>A universe and the first slot in it.</summary>
    public static readonly Phrase<ControlAddress> Address = new(
        "control-address",
        "a universe and a slot",
        $@"{Patterns.Whole}{Patterns.Spaces}/{Patterns.Spaces}{Patterns.Whole}",
        ["1/25", "2 / 1"],
        Read);

    private static bool Read(Cursor cursor, out ControlAddress value)
    {
        value = default;
        if (!ReadNumber(cursor, out var universe))
        {
            return false;
        }

        cursor.SkipSpaces();
        if (!cursor.Take('/') || !ReadNumber(cursor, out var slot))
        {
            return false;
        }

        value = new(universe, slot);
        return true;
    }

    private static bool ReadNumber(Cursor cursor, out int number)
    {
        cursor.SkipSpaces();
        var start = cursor.At;
        return cursor.Whole(out number) && (number > 0 || cursor.Fail(PhraseFaults.OutOfRange(start, cursor.Written(start, cursor.At), "1 and more")));
    }
}
