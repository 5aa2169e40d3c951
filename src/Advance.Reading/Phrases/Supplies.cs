using System.Diagnostics.CodeAnalysis;
using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>What a service gives, or a thing takes, from the mains.</summary>
internal static class Supplies
{
    // Of what two voltages with a stroke between them may be: 120/208, 230/400, 277/480.
    private const double LineToNeutral = 1.7320508;
    private const double Tolerance = 0.02;

    private static readonly (string Word, Phases Phases)[] Words = [("single-phase", Phases.Single), ("split-phase", Phases.Split), ("three-phase", Phases.Three)];

    private static readonly string Volts = $@"{Patterns.Number}(?:\s*{Patterns.Minus}\s*{Patterns.Number})?";

    /// <summary>Voltage, phases, frequency.</summary>
    public static readonly Phrase<Supply> Supply = new(
        "supply",
        "a supply",
        $@"{Volts}(?:\s*/\s*{Volts})*\s*V(?:\s+{Patterns.AnyOf(Words.Select(one => one.Word))})?(?:\s+{Patterns.Number}(?:\s*/\s*{Patterns.Number})?\s*Hz)?",
        ["230 V single-phase 50 Hz", "230/400 V three-phase 50 Hz", "100-240 V 50/60 Hz", "120/240 V split-phase 60 Hz", "230 V", "115/230 V"],
        Read);

    private static bool Read(Cursor cursor, [MaybeNullWhen(false)] out Supply supply)
    {
        supply = null;
        cursor.SkipSpaces();
        var start = cursor.At;
        var ranges = new List<VoltageRange>();
        do
        {
            cursor.SkipSpaces();
            if (!ReadRange(cursor, out var range))
            {
                return false;
            }

            ranges.Add(range);
            cursor.SkipSpaces();
        }
        while (cursor.Take('/'));

        if (UnitKinds.Potential.Read(cursor, start) is not { Symbol: "V" })
        {
            return false;
        }

        var phases = ReadPhases(cursor);
        if (!ReadFrequencies(cursor, out var frequencies))
        {
            return false;
        }

        supply = Of(ranges, phases, frequencies);
        return true;
    }

    private static bool ReadRange(Cursor cursor, out VoltageRange range)
    {
        range = default;
        var start = cursor.At;
        if (!cursor.Number(out var least))
        {
            return false;
        }

        var most = least;
        var after = cursor.At;
        cursor.SkipSpaces();
        if (cursor.Take('-'))
        {
            cursor.SkipSpaces();
            if (!cursor.Number(out most))
            {
                return false;
            }
        }
        else
        {
            cursor.At = after;
        }

        range = new(ElectricPotential.FromVolts(least), ElectricPotential.FromVolts(most));
        return least <= 0 ? cursor.Fail(PhraseFaults.OutOfRange(start, cursor.Written(start, cursor.At), "more than 0 V"))
            : most >= least || cursor.Fail(PhraseFaults.Backwards(start, cursor.Written(start, cursor.At)));
    }

    private static Phases? ReadPhases(Cursor cursor)
    {
        foreach (var (word, phases) in Words)
        {
            if (cursor.TakeWord(word))
            {
                return phases;
            }
        }

        return null;
    }

    private static bool ReadFrequencies(Cursor cursor, out IReadOnlyList<Frequency> frequencies)
    {
        var found = new List<Frequency>();
        frequencies = found;
        var isApart = cursor.SkipSpaces();
        var start = cursor.At;
        if (cursor.IsAtEnd || !isApart)
        {
            return true;
        }

        do
        {
            cursor.SkipSpaces();
            if (!cursor.Number(out var hertz))
            {
                return false;
            }

            found.Add(Frequency.FromHertz(hertz));
            cursor.SkipSpaces();
        }
        while (found.Count < 2 && cursor.Take('/'));

        return UnitKinds.Frequency.Read(cursor, start) is { Symbol: "Hz" };
    }

    // A thing with a switch takes 115/230 V; a service of 120/240 V says that it is split, and one of 230/400 V can only be three-phase.
    private static Supply Of(List<VoltageRange> ranges, Phases? phases, IReadOnlyList<Frequency> frequencies)
    {
        if (ranges is [var neutral, var lines] && IsOne(neutral) && IsOne(lines))
        {
            var isThree = Math.Abs((lines.Least.Volts / neutral.Least.Volts) - LineToNeutral) < LineToNeutral * Tolerance;
            if (phases is Phases.Three or Phases.Split || (phases is null && isThree))
            {
                return new([neutral], lines.Least, phases ?? Phases.Three, frequencies);
            }
        }

        return new(ranges, null, phases, frequencies);
    }

    private static bool IsOne(VoltageRange range) => range.Least.Volts == range.Most.Volts;
}
