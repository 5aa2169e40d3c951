using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>Lengths, metric or in feet and inches with fractions.</summary>
internal static class Lengths
{
    private const string Vulgar = "½¼¾⅛⅜⅝⅞";

    /// <summary>A number that may be a fraction: <c>6</c>, <c>0.4</c>, <c>6-1/2</c>, <c>6 1/2</c>, <c>1/2</c>, <c>6½</c>.</summary>
    public const string Mixed = $@"(?:(?:[0-9]{{1,9}}(?:{Patterns.Minus}|\s+))?[0-9]{{1,4}}/[1-9][0-9]{{0,3}}|[0-9]{{0,9}}[{Vulgar}]|{Patterns.Number})";

    private const string Inches = $@"{Mixed}\s*(?:in{Patterns.UnitEnd}|{Patterns.Inch})";

    /// <summary>The pattern of a length that is not negative.</summary>
    public const string Pattern = $@"(?:{Mixed}\s*(?:ft{Patterns.UnitEnd}|{Patterns.Foot})\s*{Inches}|{Mixed}\s*(?:(?:m|cm|mm|km|ft|in){Patterns.UnitEnd}|{Patterns.Foot}|{Patterns.Inch}))";

    private static readonly Unit Foot = UnitKinds.Length.Find("ft")!;
    private static readonly Unit Inch = UnitKinds.Length.Find("in")!;
    private static readonly double[] VulgarValues = [0.5, 0.25, 0.75, 0.125, 0.375, 0.625, 0.875];

    /// <summary>A length of a thing or a way: never negative.</summary>
    public static readonly Phrase<Length> Length = new(
        "length", "a length", Pattern, ["12 m", "12m", "0.4 m", "45 cm", "250 mm", "39 ft", "12' 6\"", "6-1/2 in", "5' 6½\""], Read);

    /// <summary>How far something lies to one side of something else, which may be the other side.</summary>
    public static readonly Phrase<Length> Signed = new("signed-length", "a length", $"{Patterns.Minus}?{Patterns.Spaces}{Pattern}", ["1.2 m", "-0.4 m", "- 6 in"], ReadSigned);

    /// <summary>Reads a number and its unit, and inches after feet.</summary>
    public static bool Read(Cursor cursor, out Length value)
    {
        value = default;
        if (!Sign.Read(cursor, UnitKinds.Length.Quantity, isAllowed: false, out _))
        {
            return false;
        }

        var start = cursor.At;
        return ReadMixed(cursor, out var number) && ReadUnit(cursor, start, number, out value, out _);
    }

    /// <summary>Reads what follows the number of a length.</summary>
    /// <param name="cursor">After the number.</param>
    /// <param name="start">Where the number starts, for the fault.</param>
    /// <param name="number">The number.</param>
    /// <param name="value">The length.</param>
    /// <param name="unit">The unit; of feet and inches, the feet.</param>
    public static bool ReadUnit(Cursor cursor, int start, double number, out Length value, [NotNullWhen(true)] out Unit? unit)
    {
        unit = Tick(cursor) ?? UnitKinds.Length.Read(cursor, start);
        value = default;
        if (unit is null)
        {
            return false;
        }

        value = UnitsNet.Length.FromMeters(unit.InBaseUnits(number));
        return unit != Foot || AddInches(cursor, number, ref value);
    }

    /// <summary>Reads a number that may have a fraction.</summary>
    public static bool ReadMixed(Cursor cursor, out double number)
    {
        if (TakeVulgar(cursor, out number))
        {
            return true;
        }

        var start = cursor.At;
        if (!cursor.Number(out number))
        {
            return false;
        }

        if (cursor.Now == '/')
        {
            cursor.At = start;
            return ReadFraction(cursor, out number);
        }

        if (cursor.Text.AsSpan(start, cursor.At - start).Contains('.'))
        {
            return true;
        }

        if (TakeVulgar(cursor, out var part) || ReadFractionAfter(cursor, out part))
        {
            number += part;
        }

        return cursor.Fault is null;
    }

    private static bool ReadSigned(Cursor cursor, out Length value)
    {
        value = default;
        Sign.Read(cursor, UnitKinds.Length.Quantity, isAllowed: true, out var sign);
        if (!Read(cursor, out var length))
        {
            return false;
        }

        value = UnitsNet.Length.FromMeters(sign * length.Meters);
        return true;
    }

    private static Unit? Tick(Cursor cursor)
    {
        var from = cursor.At;
        cursor.SkipSpaces();
        var unit = cursor.Take('\'') ? Foot : cursor.Take('"') ? Inch : null;
        cursor.At = unit is null ? from : cursor.At;
        return unit;
    }

    // Inches after feet. Where none follow, what follows is somebody else's.
    private static bool AddInches(Cursor cursor, double feet, ref Length value)
    {
        var from = cursor.At;
        cursor.SkipSpaces();
        var start = cursor.At;
        if (!(char.IsAsciiDigit(cursor.Now) || cursor.Now == '.' || Vulgar.Contains(cursor.Now)) || !ReadMixed(cursor, out var inches))
        {
            cursor.At = from;
            return cursor.Fault is null;
        }

        if (!TakeInches(cursor))
        {
            return cursor.Fail(PhraseFaults.WhichUnit(start, cursor.Written(start, cursor.At), "in"));
        }

        value = UnitsNet.Length.FromMeters(Inch.InBaseUnits((feet * 12) + inches));
        return true;
    }

    private static bool TakeInches(Cursor cursor)
    {
        cursor.SkipSpaces();
        var isWord = UnitKind.Symbol(cursor.Text.AsSpan(cursor.At)) is "in";
        cursor.At += isWord ? 2 : 0;
        return isWord || cursor.Take('"');
    }

    private static bool TakeVulgar(Cursor cursor, out double value)
    {
        var index = cursor.IsAtEnd ? -1 : Vulgar.IndexOf(cursor.Now);
        value = index < 0 ? 0 : VulgarValues[index];
        cursor.At += index < 0 ? 0 : 1;
        return index >= 0;
    }

    // The 1/2 of 6-1/2 or 6 1/2.
    private static bool ReadFractionAfter(Cursor cursor, out double part)
    {
        var from = cursor.At;
        part = 0;
        if ((cursor.Take('-') || cursor.SkipSpaces()) && char.IsAsciiDigit(cursor.Now) && ReadFraction(cursor, out part))
        {
            return true;
        }

        cursor.At = from;
        return false;
    }

    private static bool ReadFraction(Cursor cursor, out double part)
    {
        part = 0;
        if (!cursor.Whole(out var top) || top > 9999 || !cursor.Take('/') || cursor.Now == '0' || !cursor.Whole(out var bottom) || bottom > 9999)
        {
            return false;
        }

        part = (double)top / bottom;
        return true;
    }
}
