using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>Lengths of time: one unit, or hours and minutes together.</summary>
internal static class Durations
{
    private const string Single = $@"{Patterns.Number}\s*(?:s|ms|[uµμ]s|min|h){Patterns.UnitEnd}";

    // Minutes follow a whole number of hours, however that is written: 1.0 h 30 min.
    private const string WholeHours = @"(?:[0-9]{1,12}(?:\.0{1,12})?|\.0{1,12})";

    public static readonly Phrase<Duration> Duration = new(
        "length-of-time", "a length of time", $@"(?:{WholeHours}\s*h\s+{Patterns.Whole}\s*min{Patterns.UnitEnd}|{Single})", ["45 min", "1.5 h", "1 h 30 min", "4.2 ms", "10 s"], Read);

    /// <summary>Reads a length of time.</summary>
    public static bool Read(Cursor cursor, out Duration value)
    {
        value = default;
        if (!Sign.Read(cursor, UnitKinds.Duration.Quantity, isAllowed: false, out _))
        {
            return false;
        }

        var start = cursor.At;
        if (!cursor.Number(out var number) || UnitKinds.Duration.Read(cursor, start) is not { } unit)
        {
            return false;
        }

        var seconds = unit.InBaseUnits(number);
        if (unit.Symbol == "h" && number == Math.Floor(number))
        {
            AddMinutes(cursor, ref seconds);
        }

        value = UnitsNet.Duration.FromSeconds(seconds);
        return cursor.Fault is null;
    }

    // The 30 min of 1 h 30 min.
    private static void AddMinutes(Cursor cursor, ref double seconds)
    {
        var from = cursor.At;
        if (cursor.SkipSpaces() && cursor.Whole(out var minutes))
        {
            cursor.SkipSpaces();
            if (UnitKind.Symbol(cursor.Text.AsSpan(cursor.At)) is "min")
            {
                cursor.At += "min".Length;
                seconds += minutes * 60;
                return;
            }
        }

        cursor.At = from;
    }
}
