using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>Two or three lengths with an x between them; one unit may close the list.</summary>
internal static class Sizes
{
    private const string Part = $"(?:{Lengths.Pattern}|{Lengths.Mixed})";
    private const string By = $@"\s*{Patterns.Times}\s*";

    public static readonly Phrase<Size> Size = new(
        "size", "a size", $"{Part}{By}(?:{Part}{By})?{Lengths.Pattern}", ["8 x 5 m", "2 x 1 x 0.2 m", "600 x 400 mm", "12' x 8' 6\"", "40ft × 24ft"], Read);

    private static bool Read(Cursor cursor, out Size size)
    {
        size = default;
        var start = cursor.At;
        var parts = new List<SizePart>(3);
        do
        {
            if (parts.Count == 3 || !ReadPart(cursor, out var part))
            {
                return false;
            }

            parts.Add(part);
            cursor.SkipSpaces();
        }
        while (cursor.Take('x'));

        if (parts[^1].Unit is null)
        {
            return cursor.Fail(PhraseFaults.WhichUnit(start, cursor.Written(start, cursor.At), UnitKinds.Length.Offered));
        }

        if (parts.Count < 2)
        {
            return false;
        }

        size = new(Close(parts, 0), Close(parts, 1), parts.Count == 3 ? Close(parts, 2) : null);
        return true;
    }

    private static bool ReadPart(Cursor cursor, out SizePart part)
    {
        cursor.SkipSpaces();
        var at = cursor.At;
        part = default;
        if (!Lengths.ReadMixed(cursor, out var number))
        {
            return false;
        }

        var after = cursor.At;
        cursor.SkipSpaces();
        if (cursor.Now == 'x' || cursor.IsAtEnd)
        {
            part = new(number, default, null);
            return true;
        }

        cursor.At = after;
        var isRead = Lengths.ReadUnit(cursor, at, number, out var length, out var unit);
        part = new(number, length, unit);
        return isRead;
    }

    private static Length Close(List<SizePart> parts, int index) => parts[index].Among(parts.Skip(index));
}
