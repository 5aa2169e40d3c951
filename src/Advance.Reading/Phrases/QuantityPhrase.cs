namespace Advance.Reading.Phrases;

/// <summary>A number with its unit.</summary>
internal static class QuantityPhrase
{
    /// <summary>Makes the phrase of a kind of quantity.</summary>
    /// <param name="name">In the schema.</param>
    /// <param name="kind">Its units.</param>
    /// <param name="make">The value of so many base units.</param>
    /// <param name="isSigned">Whether it may be negative.</param>
    /// <param name="examples">At least one.</param>
    public static Phrase<T> Of<T>(string name, UnitKind kind, Func<double, T> make, bool isSigned, params string[] examples)
        where T : struct
    {
        var sign = isSigned ? $"{Patterns.Minus}?{Patterns.Spaces}" : "";
        return new(name, kind.Quantity, $"{sign}{Patterns.Number}{Patterns.Spaces}{kind.Pattern}", examples, (Cursor cursor, out T value) =>
        {
            value = default;
            var isRead = Read(cursor, kind, isSigned, out var amount);
            value = isRead ? make(amount) : default;
            return isRead;
        });
    }

    private static bool Read(Cursor cursor, UnitKind kind, bool isSigned, out double amount)
    {
        amount = 0;
        if (!Sign.Read(cursor, kind.Quantity, isSigned, out var sign))
        {
            return false;
        }

        var start = cursor.At;
        if (!cursor.Number(out var number) || kind.Read(cursor, start) is not { } unit)
        {
            return false;
        }

        amount = unit.InBaseUnits(sign * number);
        return true;
    }
}
