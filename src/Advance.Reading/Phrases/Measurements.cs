using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>Places measured on the ground: sideways from the centre line, up- or downstage, from the stage or from a named thing.</summary>
internal static class Measurements
{
    /// <summary>Whether a word is a direction.</summary>
    public static bool IsDirection(ReadOnlySpan<char> word) => word is "SR" or "SL" or "US" or "DS";

    /// <summary>Reads one or two measures in any order, and what they are measured from.</summary>
    public static bool Read(Cursor cursor, [MaybeNullWhen(false)] out Place place)
    {
        place = null;
        Length? sideways = null, upstage = null;
        Side? side = null;
        do
        {
            var start = cursor.At;
            if (!ReadOne(cursor, out var way, out var length))
            {
                return false;
            }

            var isAlong = way is "US" or "DS";
            if ((isAlong ? upstage : sideways) is not null)
            {
                return cursor.Fail(PhraseFaults.Twice(start, cursor.Written(start, cursor.At)));
            }

            if (isAlong)
            {
                upstage = way == "US" ? length : Length.FromMeters(-length.Meters);
            }
            else
            {
                sideways = length;
                side = way switch { "SR" => Side.StageRight, "SL" => Side.StageLeft, _ => null };
            }
        }
        while (HasMore(cursor));

        if (!ReadOf(cursor, out var of))
        {
            return false;
        }

        place = new Place.Measured(sideways ?? Length.Zero, side, upstage ?? Length.Zero, of);
        return true;
    }

    // SR 4.6 m, 4.6 m SR, or 4.6 m off centre.
    private static bool ReadOne(Cursor cursor, out string way, out Length length)
    {
        way = ReadDirection(cursor);
        if (!Lengths.Read(cursor, out length))
        {
            return false;
        }

        if (way.Length > 0)
        {
            return true;
        }

        cursor.SkipSpaces();
        way = ReadDirection(cursor);
        return way.Length > 0 || (cursor.TakeWord("off") && (cursor.TakeWord("centre") || cursor.TakeWord("center")));
    }

    private static string ReadDirection(Cursor cursor)
    {
        var rest = cursor.Text.AsSpan(cursor.At);
        if (rest.Length < 2 || !IsDirection(rest[..2]) || (rest.Length > 2 && char.IsLetter(rest[2])))
        {
            return "";
        }

        cursor.At += 2;
        return rest[..2].ToString();
    }

    private static bool HasMore(Cursor cursor)
    {
        var from = cursor.At;
        if (cursor.SkipSpaces() && !cursor.IsAtEnd && cursor.PeekWord() is not "of")
        {
            return true;
        }

        cursor.At = from;
        return false;
    }

    private static bool ReadOf(Cursor cursor, out string? of)
    {
        of = null;
        if (!cursor.TakeWord("of"))
        {
            return true;
        }

        of = cursor.Written(cursor.At, cursor.Text.Length);
        cursor.At = cursor.Text.Length;
        return of.Length > 0;
    }
}
