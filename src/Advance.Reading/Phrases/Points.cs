using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>Points from a drawing: two or three coordinates in brackets; one unit may close the list.</summary>
internal static class Points
{
    /// <summary>The pattern of one coordinate.</summary>
    public const string Coordinate = $@"\s*{Patterns.Minus}?\s*(?:{Lengths.Pattern}|{Lengths.Mixed})\s*";

    /// <summary>The pattern of the last one, which has a unit.</summary>
    public const string LastCoordinate = $@"\s*{Patterns.Minus}?\s*{Lengths.Pattern}\s*";

    /// <summary>The pattern of a point.</summary>
    public const string Pattern = $@"\[{Coordinate},(?:{Coordinate},)?{LastCoordinate}\]";

    /// <summary>Reads <c>[x, y]</c> or <c>[x, y, z]</c>.</summary>
    public static bool Read(Cursor cursor, [MaybeNullWhen(false)] out Place place)
    {
        place = null;
        var start = cursor.At;
        var parts = new List<(int Sign, SizePart Part)>(3);
        cursor.Take('[');
        cursor.CommaParts = true;
        do
        {
            if (parts.Count == 3 || !ReadPart(cursor, parts))
            {
                return false;
            }

            cursor.SkipSpaces();
        }
        while (cursor.Take(','));

        if (!cursor.Take(']') || parts.Count < 2)
        {
            return false;
        }

        if (parts[^1].Part.Unit is null)
        {
            return cursor.Fail(PhraseFaults.WhichUnit(start, cursor.Written(start, cursor.At), UnitKinds.Length.Offered));
        }

        place = new Place.AtPoint(Close(parts, 0), Close(parts, 1), parts.Count == 3 ? Close(parts, 2) : null);
        return true;
    }

    private static bool ReadPart(Cursor cursor, List<(int Sign, SizePart Part)> parts)
    {
        Sign.Read(cursor, UnitKinds.Length.Quantity, isAllowed: true, out var sign);
        var at = cursor.At;
        if (!Lengths.ReadMixed(cursor, out var number))
        {
            return false;
        }

        var after = cursor.At;
        cursor.SkipSpaces();
        if (cursor.Now is ',' or ']' || cursor.IsAtEnd)
        {
            parts.Add((sign, new(number, default, null)));
            return true;
        }

        cursor.At = after;
        var isRead = Lengths.ReadUnit(cursor, at, number, out var length, out var unit);
        parts.Add((sign, new(number, length, unit)));
        return isRead;
    }

    private static Length Close(List<(int Sign, SizePart Part)> parts, int index)
    {
        var (sign, part) = parts[index];
        return Length.FromMeters(sign * part.Among(parts.Skip(index).Select(later => later.Part)).Meters);
    }
}
