namespace Advance.Reading.Phrases;

/// <summary>The minus before a quantity.</summary>
internal static class Sign
{
    /// <summary>Reads a minus, if there is one.</summary>
    /// <param name="cursor">Before the number.</param>
    /// <param name="quantity">For the fault.</param>
    /// <param name="isAllowed">Whether the quantity may be negative.</param>
    /// <param name="sign">1 or -1.</param>
    /// <returns>False where there is a minus that may not be.</returns>
    public static bool Read(Cursor cursor, string quantity, bool isAllowed, out int sign)
    {
        cursor.SkipSpaces();
        sign = 1;
        var at = cursor.At;
        if (!cursor.Take('-'))
        {
            return true;
        }

        cursor.SkipSpaces();
        sign = -1;
        if (!isAllowed && (char.IsAsciiDigit(cursor.Now) || cursor.Now == '.'))
        {
            cursor.Fail(PhraseFaults.Negative(at, 1, $"{char.ToUpperInvariant(quantity[0])}{quantity[1..]}"));
        }

        return isAllowed;
    }
}
