using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Places;

namespace Advance.Reading.Phrases;

/// <summary>Places, as they are said on a dock.</summary>
internal static class Places
{
    /// <summary>What no name starts with, so that a place that went wrong is not taken for one.</summary>
    private const string NameStart = """[^\s0-9.,\[\]{}()½¼¾⅛⅜⅝⅞‐‑‒–—−-]""";

    private const string Measure = $@"(?:(?:SR|SL|US|DS)\s*{Lengths.Pattern}|{Lengths.Pattern}\s*(?:SR|SL|US|DS|off\s+cent(?:re|er)))";
    private const string Measures = $@"{Measure}(?:\s+{Measure})?(?:\s+of\s+{Patterns.Text})?";
    private const string Named = $@"(?!(?:cent(?:re|er)\s+)?(?:SR|SL|US|DS)\s*[0-9.]){NameStart}(?:[\s\S]*\S)?";

    private static readonly (string Word, StageArea Area)[] Areas =
    [
        ("DSR", StageArea.DownstageRight), ("DSC", StageArea.DownstageCentre), ("DSL", StageArea.DownstageLeft),
        ("SR", StageArea.StageRight), ("C", StageArea.Centre), ("SL", StageArea.StageLeft),
        ("USR", StageArea.UpstageRight), ("USC", StageArea.UpstageCentre), ("USL", StageArea.UpstageLeft),
    ];

    /// <summary>Where a thing is.</summary>
    public static readonly Phrase<Place> Place = new(
        "place",
        "a place",
        $@"(?:(?:cent(?:re|er)\s+)?{Measures}|{Points.Pattern}|{Named})",
        ["SR 4.6 m US 0.4 m", "DS 16 m", "4.6 m off centre DS 0.4 m", "6 m US of hall door line", "USR", "centre", "centre US 2 m", "at drum riser", "drums", "[1.2, 4, 6.5 m]"],
        Read);

    /// <summary>Reads a place; a name runs to the end of the text.</summary>
    public static bool Read(Cursor cursor, [MaybeNullWhen(false)] out Place place)
    {
        cursor.SkipSpaces();
        var start = cursor.At;
        place = Whole(cursor.Text.AsSpan(start).TrimEnd());
        if (place is not null)
        {
            cursor.At = cursor.Text.Length;
            return true;
        }

        if (cursor.Now == '[')
        {
            return Points.Read(cursor, out place);
        }

        SkipCentre(cursor);
        if (char.IsAsciiDigit(cursor.Now) || cursor.Now is '.' || StartsMeasure(cursor))
        {
            return Measurements.Read(cursor, out place);
        }

        return ReadName(cursor, start, out place);
    }

    private static Place? Whole(ReadOnlySpan<char> text)
    {
        if (text is "centre" or "center")
        {
            return Domain.Places.Place.Centre.It;
        }

        foreach (var (word, area) in Areas)
        {
            if (text.SequenceEqual(word))
            {
                return new Place.AtArea(area);
            }
        }

        return null;
    }

    // centre US 2 m is US 2 m, on the centre line.
    private static void SkipCentre(Cursor cursor)
    {
        var start = cursor.At;
        if (!(cursor.TakeWord("centre") || cursor.TakeWord("center")) || !cursor.SkipSpaces() || !StartsMeasure(cursor))
        {
            cursor.At = start;
        }
    }

    private static bool StartsMeasure(Cursor cursor) =>
        cursor.Text.AsSpan(cursor.At) is [('S' or 'U' or 'D'), ('R' or 'L' or 'S'), .. var rest]
        && Measurements.IsDirection(cursor.Text.AsSpan(cursor.At, 2))
        && rest.TrimStart(' ') is [(>= '0' and <= '9') or '.', ..];

    private static bool ReadName(Cursor cursor, int start, [MaybeNullWhen(false)] out Place place)
    {
        place = null;
        if (IsInSmallLetters(cursor))
        {
            return cursor.Fail(PhraseFaults.Capitals(start, cursor.PeekWord().ToString()));
        }

        if (cursor.IsAtEnd || !IsNameStart(cursor.Now))
        {
            return false;
        }

        var from = cursor.TakeWord("at") && cursor.SkipSpaces() && !cursor.IsAtEnd ? cursor.At : start;
        cursor.At = cursor.Text.Length;
        place = new Place.AtThing(cursor.Written(from, cursor.At));
        return true;
    }

    // dsr, or sr 4.6 m.
    private static bool IsInSmallLetters(Cursor cursor)
    {
        var rest = cursor.Text.AsSpan(cursor.At).TrimEnd();
        var word = cursor.PeekWord();
        var capitals = word.ToString().ToUpperInvariant();
        return !word.SequenceEqual(capitals)
            && ((rest.Length == word.Length && word.Length > 1 && Whole(capitals) is not null)
                || (Measurements.IsDirection(capitals) && rest[word.Length..].TrimStart() is [(>= '0' and <= '9'), ..]));
    }

    private static bool IsNameStart(char sign) => !char.IsAsciiDigit(sign) && !".,[]{}()½¼¾⅛⅜⅝⅞-".Contains(sign);
}
