using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>Sides, aims, heights and the end that things are counted from.</summary>
internal static class Directions
{
    /// <summary>One side of the stage.</summary>
    public static readonly Phrase<Side> Side = Choice.Of("side", "a side of the stage", ("SR", Domain.Places.Side.StageRight), ("SL", Domain.Places.Side.StageLeft));

    /// <summary>One side or a mirrored pair.</summary>
    public static readonly Phrase<Sides> Sides = Choice.Of(
        "sides",
        "one or both sides of the stage",
        ("SR SL", new Sides(Domain.Places.Side.StageRight, Domain.Places.Side.StageLeft)),
        ("SL SR", new Sides(Domain.Places.Side.StageLeft, Domain.Places.Side.StageRight)),
        ("SR", new Sides(Domain.Places.Side.StageRight)),
        ("SL", new Sides(Domain.Places.Side.StageLeft)));

    /// <summary>The end that a row is numbered from.</summary>
    public static readonly Phrase<NumberedFrom> NumberedFrom = Choice.Of(
        "numbered-from",
        "an end to count from",
        ("from SR", Domain.Places.NumberedFrom.StageRight),
        ("from SL", Domain.Places.NumberedFrom.StageLeft),
        ("from downstage", Domain.Places.NumberedFrom.Downstage),
        ("from upstage", Domain.Places.NumberedFrom.Upstage));

    /// <summary>Which way a thing faces.</summary>
    public static readonly Phrase<Aim> Aim = new(
        "aim",
        "an aim",
        $@"(?:straight|toe{Patterns.Minus}(?:in|out)\s+{Quantities.Angle.Pattern}|at\s+{Places.Place.Pattern})",
        ["straight", "toe-in 5 deg", "toe-out 10 deg", "at dance floor", "at DS 16 m"],
        ReadAim);

    /// <summary>How far a frame or a box looks down; what looks up is negative.</summary>
    public static readonly Phrase<Angle> Tilt = new(
        "tilt",
        "a tilt",
        $@"(?:level|nose{Patterns.Minus}(?:down|up)\s+{Quantities.Angle.Pattern})",
        ["nose-down 3 deg", "nose-up 2.5 deg", "level"],
        ReadTilt);

    /// <summary>A height, and above what.</summary>
    public static readonly Phrase<HeightFrom> Height = new(
        "height",
        "a height",
        $@"{Lengths.Pattern}(?:\s+(?:above|below)\s+{Patterns.Text})?",
        ["0.6 m above floor", "6.5 m", "18' 6\" above deck", "1.2 m below deck"],
        ReadHeight);

    private static bool ReadAim(Cursor cursor, [MaybeNullWhen(false)] out Aim aim)
    {
        aim = null;
        if (cursor.TakeWord("straight"))
        {
            aim = Domain.Places.Aim.Straight.It;
            return true;
        }

        var isIn = cursor.TakeWord("toe-in");
        if (isIn || cursor.TakeWord("toe-out"))
        {
            if (!cursor.SkipSpaces() || !Quantities.Angle.Scan(cursor, out var angle))
            {
                return false;
            }

            aim = new Aim.Toed(Angle.FromDegrees(isIn ? angle.Degrees : -angle.Degrees));
            return true;
        }

        if (!cursor.TakeWord("at") || !cursor.SkipSpaces() || !Places.Read(cursor, out var place))
        {
            return false;
        }

        aim = new Aim.AtPlace(place);
        return true;
    }

    private static bool ReadTilt(Cursor cursor, out Angle tilt)
    {
        tilt = default;
        if (cursor.TakeWord("level"))
        {
            return true;
        }

        var isDown = cursor.TakeWord("nose-down");
        if ((!isDown && !cursor.TakeWord("nose-up")) || !cursor.SkipSpaces() || !Quantities.Angle.Scan(cursor, out var angle))
        {
            return false;
        }

        tilt = Angle.FromDegrees(isDown ? angle.Degrees : -angle.Degrees);
        return true;
    }

    private static bool ReadHeight(Cursor cursor, out HeightFrom height)
    {
        height = default;
        if (!Lengths.Read(cursor, out var length))
        {
            return false;
        }

        var isBelow = cursor.TakeWord("below");
        if (!isBelow && !cursor.TakeWord("above"))
        {
            height = new(length);
            return true;
        }

        var from = cursor.Written(cursor.At, cursor.Text.Length);
        cursor.At = cursor.Text.Length;
        height = new(isBelow ? Length.FromMeters(-length.Meters) : length, from);
        return from.Length > 0;
    }
}
